import type { Folder } from "../notes.ts";

/** Left-handed, independent professional; long rounds cost him speed. */
export const anselm: Folder = {
  "profile.md": `---
name: Anselm Drovik
aliases: [Drovik, Drov]
born: 1998-05-28
sport: baseball
level: independent-professional
sex: male
bats: left
throws: left
positions: [outfield, first base]
heights: [{ date: 2025-10-06, in: 74 }]
masses: [{ date: 2025-10-06, lb: 212 }, { date: 2026-02-16, lb: 210 }]
game_bat: [{ id: maple-34, from: 2025-10-06 }]
joined: 2025-10-06
days: [tue, thu]
gates:
  - { applies: { environment: machine, implement: game }, at_least: 73, from: 2025-10-06 }
consent:
  - { by: self, as: self, on: 2025-10-06, readers: [family, club], covers: [numbers, peers] }
recipients:
  - { id: own-copy, reader: family, label: Own copy }
  - { id: club-office, reader: club, label: Club office, until: 2030-06-30 }
  - { id: agent, reader: club, label: Agent, until: 2030-06-30 }
goals:
  - { metric: bat_speed, condition: { environment: machine, implement: game }, target: 77, by: 2026-03-20, set: 2025-10-09, why: There when his club begins }
  - { metric: exit_velocity, condition: { environment: machine, implement: game }, at_least: 100, share: 0.5, by: 2026-02-20, set: 2025-10-09 }
  - { metric: attack_angle, condition: { environment: machine, implement: game }, window: [4, 14], share: 0.65, by: 2026-02-20, set: 2025-10-09 }
---

Knows his body. Ask first, prescribe second.
`,
  "assessment.md": `---
date: 2025-10-13
by: brandt
priorities:
  - { id: late-in-the-round, text: Keep the last swings of a round as quick as the first, measures: [bat_speed], drills: [machine-set] }
  - { id: wood-first, text: Find the barrel of a wooden bat early in the winter, measures: [exit_velocity], drills: [tee-middle, toss-firm] }
---

Everything is there, and the first swings of each round show it. After that the bat slows down swing by swing. He had
always taken long rounds, since that is how the clubs do it.
`,
  "plan.md": `---
date: 2026-02-19
by: brandt
warm_up: { en: "Ten slow turns, then five easy swings off the tee", es: "Diez giros lentos y luego cinco swings suaves en el tee" }
own_cue: { en: "Quit while it is quick", es: "Para mientras es rápido" }
items:
  - { drill: machine-set, purpose: Short rounds with long rests, implement: game, sets: 5, reps: 4, rest_s: 120, cue: Stop while it is quick, caution: Helmet on, days_per_week: 3, where: supervised }
  - { drill: machine-bend, purpose: Wait on the slower pitch, implement: game, sets: 3, reps: 4, rest_s: 120, caution: Helmet on, days_per_week: 1, where: supervised }
  - { drill: tee-middle, purpose: Barrel feel on wood, implement: game, sets: 2, reps: 5, rest_s: 60, days_per_week: 3, where: home }
  - { drill: dry-thirds, purpose: Quick without contact, implement: bb-under, sets: 2, reps: 5, rest_s: 120, caution: Room on all sides, days_per_week: 1, where: home }
  - { drill: tee-low-away, purpose: Legs first on the outer half, implement: game, sets: 2, reps: 5, rest_s: 60, days_per_week: 1, where: home }
---

Quality ends the round, not a number on a bucket.
`,
  "closing.md": `---
date: 2026-02-20
by: brandt
readers: [family]
---

Anselm,

you came in as a finished hitter, so I looked for what the game takes from you and not for what is missing. It was the
second half of the round. Fresh, you have the quickest bat in the building. Swing after swing without a break, it slows,
and it did so in February as it did in October. We left the long rounds in on purpose, to be
able to see it.

The level itself moved up a little. Whether you notice that in a game I cannot say, and I would not sell it to a club as
more than it is.

My advice is plain: shorter rounds, longer rests, and the first swings of a day count the most. Thank you for showing the
young ones how a professional prepares, bucket and broom included.

Ilse
`,
  "notes/2025-10-28-rounds.md": `---
date: 2025-10-28
author: brandt
kind: observation
about: [late-in-the-round, bat_speed]
readers: [family, club]
---

The drop inside a round is there on every day, also on the good ones. He keeps his long rounds for now, so that we can see
it properly.
`,
  "notes/2025-12-18-wood.md": `---
date: 2025-12-18
author: brandt
kind: observation
about: [wood-first]
readers: [family]
---

The wooden barrel is found more often than in October. His hands are calm, also early in the morning.
`,
  "notes/2026-01-20-try.md": `---
date: 2026-01-20
author: teo
kind: observation
---

He would like to try short rounds right away. Ilse wants one more month of the same for a clean look. Desk only.
`,
  "notes/2026-02-10-words.md": `---
date: 2026-02-10
author: athlete
kind: words
readers: [family]
---

Ten in a row is what I know from every club I have been with. I will ask for five and a drink of water.
`,
};
