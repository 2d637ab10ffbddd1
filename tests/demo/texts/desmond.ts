import type { Folder } from "../notes.ts";

/** No clear change, and it is said. */
export const desmond: Folder = {
  "profile.md": `---
name: Desmond Farrowick
aliases: [Des F., Farro]
born: 2004-07-09
sport: baseball
level: college
sex: male
bats: right
throws: right
positions: [first base, outfield]
heights: [{ date: 2025-10-06, in: 73.5 }]
masses: [{ date: 2025-10-06, lb: 204 }, { date: 2026-02-16, lb: 203 }]
game_bat: bb-33h
joined: 2025-10-06
days: [mon, thu]
gates:
  - { applies: { environment: [front-toss, machine], implement: game }, share_of_recent_best: 0.93, days: 28, best: p90 }
consent:
  - { by: self, as: self, on: 2025-10-06, readers: [family, club], covers: [numbers, peers, body-mass] }
recipients:
  - { id: own-copy, reader: family, label: Own copy }
  - { id: college-staff, reader: club, label: College staff, until: 2030-06-30 }
goals:
  - { metric: bat_speed, condition: { environment: machine, implement: game }, target: 76, by: 2026-02-20, set: 2025-12-12, why: "As much above his start as in October, in what the new sensor reads" }
  - { metric: exit_velocity, condition: { ball: soft-nine }, at_least: 84, share: 0.5, by: 2026-02-20, set: 2025-10-09, why: A free swing at a ball that forgives }
  - { metric: attack_angle, condition: { environment: machine, implement: game }, window: [2, 12], share: 0.7, by: 2026-02-20, set: 2025-10-09 }
---

Wants the truth without sugar. Give him the interval first.
`,
  "assessment.md": `---
date: 2025-10-13
by: brandt
priorities:
  - { id: keep-the-shape, text: Keep a good swing good while the load goes up, measures: [bat_speed, attack_angle], drills: [bat-ladder, tee-middle] }
  - { id: slow-pitch, text: Stay back on the slower pitch, measures: [exit_velocity], drills: [machine-bend] }
---

There is little to repair here. A grown swing, the same from Monday to Thursday. The question for the winter was whether a
bat ladder would make it faster still.
`,
  "plan.md": `---
date: 2026-02-19
by: brandt
warm_up: { en: "Ten slow turns, then five easy swings off the tee", es: "Diez giros lentos y luego cinco swings suaves en el tee" }
own_cue: { en: "Back leg, one beat more", es: "La pierna de atrás, un tiempo más" }
items:
  - { drill: machine-bend, purpose: Hold the back leg against the slower pitch, implement: game, sets: 3, reps: 6, rest_s: 90, days_per_week: 2, where: supervised, caution: Helmet on }
  - { drill: machine-set, purpose: Stay on time, implement: game, sets: 2, reps: 7, rest_s: 90, days_per_week: 2, where: supervised, caution: Helmet on }
  - { drill: tee-middle, purpose: Check yourself, implement: game, sets: 2, reps: 5, rest_s: 60, days_per_week: 2, where: home }
  - { drill: short-overhand, purpose: Eyes on a hand, implement: game, sets: 3, reps: 6, rest_s: 60, days_per_week: 1, where: supervised }
---

The ladder is off the card. It did no harm that we could see, and nothing that we could measure either.
`,
  "closing.md": `---
date: 2026-02-20
by: brandt
readers: [family]
---

Des,

you asked me for a straight answer, so here it is. We measured you from October to February in the same lane with the same
bat, and I cannot show that your bat speed changed. Not up, not down. Your new sensor reads higher than the old one; the
evening with both on your bat tells us by how much, and the report takes it out. The bat ladder was a fair try and you
did it properly; it did not move the number.

That does not make the winter worthless. A swing that stays the same through a whole exam period is a skill of its own,
and a coach can build a line-up on it. I would now stop chasing speed for a while and spend the hours on decisions: which
pitch, which count, which half of the field. Those are places where you can still grow, and our devices do not see them.

Show this page to your staff as it is. Honest numbers are a good way to introduce yourself.

Ilse
`,
  "notes/2025-11-06-ladder.md": `---
date: 2025-11-06
author: brandt
kind: observation
about: [bat-ladder]
readers: [family, club]
---

The ladder as we do it: heavy and light one time, short and long the next. His own bat always comes after it.
`,
  "notes/2025-12-08-look.md": `---
date: 2025-12-08
author: brandt
kind: observation
about: [bat_speed]
readers: [family]
---

Half-way look. Good days and plain days, and no direction that I would put my name to. We go on as planned.
`,
  "notes/2025-12-11-sensors.md": `---
date: 2025-12-11
author: brandt
kind: observation
about: [bat_speed]
readers: [family]
---

The cell of his sensor is worn out. Tonight the old and the new one hung on the bat together, off the tee and against the
machine, so that we know what the new one reads above the old. From the next session on it is the new one alone.
`,
  "notes/2026-01-15-bend.md": `---
date: 2026-01-15
author: teo
kind: observation
about: [machine-bend]
readers: [family]
---

The slower pitch looks calmer. He waits, and the ball goes to the big part of the field.
`,
  "notes/2026-02-05-talk.md": `---
date: 2026-02-05
author: brandt
kind: observation
---

Prepared him for a flat report. He nodded and asked what to do next. Desk only.
`,
};
