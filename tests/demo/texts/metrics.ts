/** Target zones of the invented barn; spray is relative to the hitter's side, pull negative. */
export const metrics = `---
metrics:
  - { id: bat_speed, smallest_worthwhile: 1.5 }
  - { id: attack_angle, window: [4, 14], smallest_worthwhile: 2 }
zones:
  - { id: firm-line, label: { en: Firm and on a line, es: Con fuerza y en línea }, exit_velocity: [80, 130], launch_angle: [8, 25] }
  - { id: middle-field, label: { en: On a line to the middle of the field, es: En línea al centro del campo }, launch_angle: [8, 22], spray: [-25, 25] }
---

What we call a good ball off the machine. It says nothing about a game.
`;
