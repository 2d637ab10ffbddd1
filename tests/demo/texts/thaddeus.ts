import type { Folder } from "../notes.ts";

/** A switch hitter, each side measured for itself. */
export const thaddeus: Folder = {
  "profile.md": `---
name: Thaddeus Marchbane
aliases: [Thad M.]
born: 2008-09-12
sport: baseball
level: high-school
sex: male
bats: switch
throws: right
positions: [center field]
heights: [{ date: 2025-10-07, in: 71 }, { date: 2026-02-17, in: 71.25 }]
masses: [{ date: 2025-10-07, lb: 170 }, { date: 2026-02-17, lb: 174 }]
game_bat: bb-32s
joined: 2025-10-07
days: [tue, thu, sat]
gates:
  - { applies: { environment: machine, implement: game, side: right }, at_least: 64 }
  - { applies: { environment: machine, implement: game, side: left }, at_least: 59 }
measures:
  - { metric: bat_speed, condition: { environment: tee, implement: game, side: right }, purpose: training }
  - { metric: bat_speed, condition: { environment: tee, implement: game, side: left }, purpose: training }
  - { metric: bat_speed, condition: { environment: machine, implement: game, side: right }, purpose: training }
  - { metric: bat_speed, condition: { environment: machine, implement: game, side: left }, purpose: training }
  - { metric: exit_velocity, condition: { environment: machine, implement: game, side: right }, purpose: training }
  - { metric: exit_velocity, condition: { environment: machine, implement: game, side: left }, purpose: training }
consent:
  - { by: guardian, as: guardian, on: 2025-10-05, readers: [family, club], covers: [numbers, peers], until: 2030-12-31 }
goals:
  - { metric: bat_speed, condition: { environment: machine, implement: game, side: right }, target: 69, by: 2026-02-20, set: 2025-10-09 }
  - { metric: bat_speed, condition: { environment: machine, implement: game, side: left }, target: 64, by: 2026-02-20, set: 2025-10-09 }
  - { metric: attack_angle, condition: { environment: machine, implement: game, side: left }, window: [2, 12], share: 0.6, by: 2026-02-20, set: 2025-10-09 }
  - { zone: firm-line, condition: { environment: machine, implement: game, side: right }, share: 0.4, by: 2026-02-20, set: 2025-10-09, why: Speed that the ball can feel }
  - { zone: middle-field, condition: { environment: machine, implement: game, side: left }, share: 0.4, by: 2026-02-20, set: 2025-10-09, why: Room to swing on his own side }
---

His father wants to know which side to give up. Nobody has to give up anything in February.
`,
  "assessment.md": `---
date: 2025-10-11
by: brandt
priorities:
  - { id: own-left, text: A left swing of its own and not a mirror of the right one, measures: [bat_speed], drills: [mirror-turns, tee-middle] }
  - { id: right-for-games, text: Take the right side's speed to the machine, measures: [bat_speed, exit_velocity], drills: [machine-set] }
---

Two hitters in one pair of shoes. From the right he attacks, from the left he arrives. We measure the sides apart and
never add them up.
`,
  "plan.md": `---
date: 2026-02-19
by: brandt
warm_up: { en: "Ten slow turns, then five easy swings off the tee", es: "Diez giros lentos y luego cinco swings suaves en el tee" }
own_cue: { en: "Left turns like right", es: "La izquierda gira como la derecha" }
items:
  - { drill: mirror-turns, purpose: Left side only, sets: 2, reps: 8, rest_s: 45, cue: Belt buckle first, days_per_week: 4, where: home }
  - { drill: tee-middle, purpose: Two left swings for every right one, implement: game, sets: 4, reps: 4, rest_s: 60, days_per_week: 3, where: home }
  - { drill: toss-firm, purpose: Both sides in turn, implement: game, sets: 4, reps: 4, rest_s: 60, days_per_week: 2, where: supervised }
  - { drill: machine-set, purpose: Left side first while fresh, implement: game, sets: 4, reps: 4, rest_s: 90, caution: Helmet on and an adult at the machine, days_per_week: 2, where: supervised }
---

Keep a list of pitches seen from each side. It will say more about the summer than the speed does.
`,
  "closing.md": `---
date: 2026-02-20
by: brandt
readers: [family]
---

Thad,

your report keeps your two sides apart, and they tell two stories. From the right side the bat is quicker than in October, off the
tee and against the machine. From the left I cannot show a change; it started lower and it still does. We took as many
swings on one side as on the other, so it is not that we forgot it.

I would not draw the big conclusion yet. You have hit from the right since you could walk and from the left for a few
years, and a winter is short. What you can do is give the left side its own work, first in the session, when you are
fresh. Then we look again.

Please keep both until somebody throws you real sliders from both arms. And thank you for carrying the screens in from the
shed, twice, in that wind.

Ilse
`,
  "notes/2025-10-23-two.md": `---
date: 2025-10-23
author: brandt
kind: observation
about: [own-left]
readers: [family]
---

From the left he copies the right swing and runs out of room. We let the left side find a shorter stride of its own.
`,
  "notes/2025-12-09-right.md": `---
date: 2025-12-09
author: brandt
kind: milestone
about: [bat_speed, right-for-games]
readers: [family, club]
---

The right side is ahead of where it was, also off the machine. Left is steady.
`,
  "notes/2026-01-13-father.md": `---
date: 2026-01-13
author: brandt
kind: observation
---

Long talk with the father about giving up a side. Asked him to wait for the spring games. Desk only.
`,
  "notes/2026-02-03-order.md": `---
date: 2026-02-03
author: brandt
kind: plan-change
about: [machine-set]
readers: [family, club]
---

For the spring the left side goes first at the machine. In our measured rounds the right side always began, and it stays
so until the season is closed, so that the days compare.
`,
};
