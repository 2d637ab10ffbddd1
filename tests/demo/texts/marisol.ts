import type { Folder } from "../notes.ts";

/** Twelve years old: grown, and with a new bat since January. */
export const marisol: Folder = {
  "profile.md": `---
name: Marisol Quintalba
aliases: [Mari Q.]
born: 2013-08-17
sport: softball
level: 12u
sex: female
bats: right
throws: right
positions: [second base]
heights: [{ date: 2025-10-08, in: 58.5 }, { date: 2025-12-06, in: 59.25 }, { date: 2026-02-14, in: 60.25 }]
masses: [{ date: 2025-10-08, lb: 88 }, { date: 2025-12-06, lb: 91.5 }, { date: 2026-02-14, lb: 95 }]
game_bat: [{ id: fp-29, from: 2025-10-06 }, { id: fp-30, from: 2026-01-05 }]
joined: 2025-10-08
days: [wed, sat]
limits:
  - { from: 2025-10-06, to: 2026-02-22, none_of: [overload], decided_by_role: coach and guardian }
consent:
  - { by: guardian, as: guardian, on: 2025-10-01, readers: [family], covers: [numbers], until: 2030-12-31 }
recipients:
  - { id: casa, reader: family, label: Casa }
language: es
goals:
  - { metric: exit_velocity, condition: { environment: tee, implement: game }, target: 52, by: 2026-02-20, set: 2025-10-11 }
  - { metric: launch_angle, condition: { environment: tee, implement: game }, window: [5, 25], share: 0.6, by: 2026-02-20, set: 2025-10-11 }
---

Grandmother drives and waits in the cold. Offer her the chair by the heater.
`,
  "assessment.md": `---
date: 2025-10-11
by: oda
priorities:
  - { id: big-finish, text: Swing all the way round and stay on both feet, measures: [bat_speed], drills: [tee-middle, soft-side] }
  - { id: brave-eyes, text: Keep the eyes on the ball until it is gone, measures: [exit_velocity], drills: [toss-firm] }
---

She likes to hit, and she laughs when she misses. Everything else can be learned. The machine can wait until after the
winter break.
`,
  "plan.md": `---
date: 2026-02-21
by: oda
warm_up: { en: "Ten slow turns, then five easy swings off the tee", es: "Diez giros lentos y luego cinco swings suaves en el tee" }
own_cue: { en: "Big finish on both feet", es: "Final grande sobre los dos pies" }
items:
  - { drill: tee-middle, purpose: Big finish on both feet, implement: game, sets: 2, reps: 5, rest_s: 60, cue: Finish tall, days_per_week: 2, where: home }
  - { drill: soft-side, purpose: Swing freely, implement: game, sets: 2, reps: 6, rest_s: 60, days_per_week: 1, where: home }
  - { drill: toss-firm, purpose: Eyes on the ball until it is gone, implement: game, sets: 2, reps: 5, rest_s: 60, days_per_week: 1, where: supervised }
  - { drill: mirror-turns, purpose: See your own turn, sets: 1, reps: 6, days_per_week: 2, where: home }
---

Play catch, ride a bicycle, play another sport too. Stop when something hurts and tell a grown-up.
`,
  "closing.md": `---
date: 2026-02-21
by: oda
---

Marisol,

do you remember how the big tee came up to your belt in October? It does not any more. You have grown since then, and
since January you swing a longer and heavier bat. So the ball leaves your bat harder than it used to, and a part of that
is simply you growing and the new bat. Another part is the finish you practised until both feet stayed on the floor. I
cannot tell the parts from each other, and we do not need to.

You met the machine only a few times. That is too little to say anything, and it was never a test. You stood in, you kept
your eyes open, and you asked for one more ball.

To your family: thank you for every drive through the snow. Please keep it playful this spring. A few good swings and then
home is plenty.

Odalys
`,
  "closing.es.md": `---
date: 2026-02-21
by: oda
---

Marisol:

¿te acuerdas de que en octubre el tee grande te llegaba a la cintura? Ya no. Desde entonces has crecido, y desde enero
usas un bate más largo y más pesado. Por eso la pelota sale más fuerte que antes, y una parte de eso es simplemente que
has crecido y que el bate es nuevo. Otra parte es el final del swing, que practicaste hasta que los dos pies se quedaron en
el suelo. No puedo separar una parte de la otra, y tampoco hace falta.

Con la máquina bateaste muy pocas veces. Es demasiado poco para decir algo, y nunca fue un examen. Te plantaste, dejaste
los ojos abiertos y pediste una pelota más.

A la familia: gracias por cada viaje entre la nieve. Que en primavera siga siendo un juego. Unos cuantos swings buenos y a
casa es más que suficiente.

Odalys
`,
  "notes/2025-10-29-finish.md": `---
date: 2025-10-29
author: oda
kind: observation
about: [big-finish]
readers: [family]
---

Both feet stayed down today, most of the time. She counts the good ones out loud.
`,
  "notes/2025-12-06-grown.md": `---
date: 2025-12-06
author: oda
kind: observation
readers: [family]
---

Measured at the door frame: she is taller than in October. We write height and weight down so that nobody takes growth for
training, or training for growth.
`,
  "notes/2026-01-07-new-bat.md": `---
date: 2026-01-07
author: oda
kind: plan-change
about: [bat_speed, exit_velocity]
readers: [family]
---

New bat since the break, a little longer and heavier. It feels slow to her at first, and that is fine. Numbers from before
and after are not the same thing.
`,
  "notes/2026-02-11-machine.md": `---
date: 2026-02-11
author: oda
kind: milestone
about: [machine-set]
readers: [family]
---

First time at the machine, on its slowest setting, with a grown-up beside it. Big eyes, then a grin.
`,
  "notes/2026-02-18-desk.md": `---
date: 2026-02-18
author: teo
kind: observation
---

Helmet is getting tight; told the grandmother that it wants checking. Desk only.
`,
};
