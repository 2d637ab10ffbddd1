import type { Folder } from "../notes.ts";

/** His lane's bat sensor was replaced in December; the new one reads higher. */
export const bastian: Folder = {
  "profile.md": `---
name: Bastian Oakhollow
aliases: [B. Oakhollow]
born: 2009-12-15
sport: baseball
level: high-school
sex: male
bats: right
throws: right
positions: [third base]
heights: [{ date: 2025-10-06, in: 69 }, { date: 2026-02-16, in: 69.25 }]
masses: [{ date: 2025-10-06, lb: 152 }, { date: 2026-02-16, lb: 154 }]
game_bat: bb-32
joined: 2025-10-06
days: [mon, wed, sat]
consent:
  - { by: guardian, as: guardian, on: 2025-10-03, readers: [family, club], covers: [numbers, peers], until: 2030-12-31 }
goals:
  - { metric: bat_speed, condition: { environment: machine, implement: game }, target: 67, by: 2026-02-20, set: 2025-10-08 }
  - { metric: exit_velocity, condition: { environment: tee, implement: game }, target: 80, by: 2026-02-20, set: 2025-10-08 }
  - { metric: attack_angle, condition: { environment: machine, implement: game }, window: [1, 11], share: 0.65, by: 2026-02-20, set: 2025-10-08 }
---

Was so happy about the first number from the new sensor. Explain it before he tells the whole team.
`,
  "assessment.md": `---
date: 2025-10-11
by: brandt
priorities:
  - { id: quiet-head, text: Keep the head still through contact, measures: [exit_velocity], drills: [tee-middle, toss-firm] }
  - { id: more-turn, text: Use the whole turn, measures: [bat_speed], drills: [mirror-turns, bat-ladder] }
---

Hits by feel and by fun. The head travels with the ball, so contact is sometimes very good and sometimes not there.
`,
  "plan.md": `---
date: 2026-02-19
by: brandt
warm_up: { en: "Ten slow turns, then five easy swings off the tee", es: "Diez giros lentos y luego cinco swings suaves en el tee" }
own_cue: { en: "Quiet head, loud bat", es: "Cabeza quieta, bate fuerte" }
items:
  - { drill: tee-middle, purpose: Quiet head through contact, implement: game, sets: 3, reps: 5, rest_s: 60, cue: Look at the spot the ball left, days_per_week: 3, where: home }
  - { drill: mirror-turns, purpose: The whole turn, sets: 2, reps: 6, rest_s: 45, days_per_week: 3, where: home }
  - { drill: toss-firm, purpose: Still eyes on a moving ball, implement: game, sets: 2, reps: 5, rest_s: 60, days_per_week: 2, where: supervised }
  - { drill: machine-set, purpose: The same against a pitch, implement: game, sets: 3, reps: 4, rest_s: 90, caution: Helmet on and an adult at the machine, days_per_week: 2, where: supervised }
---

Measure with one sensor only from here on, and write down which.
`,
  "closing.md": `---
date: 2026-02-20
by: brandt
readers: [family]
---

Bastian,

in December the door of the old sensor broke and we put a new one on your bat. On that day your bat speed jumped. I wish I
could give you that jump, but I do not believe in it. The ball tells another story: it leaves your bat about as hard as it
did in October, and the radar behind the net was the same one all winter.

So please read the page in two halves, before and after the new sensor, and do not compare across the line. Inside each
half I see a steady hitter. We should have measured a day with both sensors, and we did not; that one is on me.

What did get better is hard to put in a number. Your head is quieter, and you laugh at a miss instead of hunting it. Both
will help when the games start.

Ilse
`,
  "notes/2025-11-10-head.md": `---
date: 2025-11-10
author: brandt
kind: observation
about: [quiet-head]
readers: [family]
---

We put a sticker where the ball sits, and he has to read it after the swing. He makes up words for it. It works.
`,
  "notes/2025-12-10-sensor.md": `---
date: 2025-12-10
author: teo
kind: observation
about: [bat_speed]
readers: [family, club]
---

New bat sensor in the shed's lane from today. Its numbers stand higher than the old one's, and the ball does not leave any
harder. Bat speed from before and after this day is not one line.
`,
  "notes/2025-12-13-tell.md": `---
date: 2025-12-13
author: brandt
kind: observation
---

Told him about the sensor. Disappointed for a minute. We owe him a day with both sensors and no longer have the old one.
Desk only.
`,
  "notes/2026-02-09-words.md": `---
date: 2026-02-09
author: athlete
kind: words
readers: [family]
---

Fine, it was the sensor. But the ball sounded good today and the sensor cannot hear that.
`,
};
