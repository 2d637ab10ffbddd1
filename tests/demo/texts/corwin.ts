import type { Folder } from "../notes.ts";

/** A clear gain, also where it counts. */
export const corwin: Folder = {
  "profile.md": `---
name: Corwin Tallowby
aliases: [C. Tallowby]
born: 2009-03-21
sport: baseball
level: high-school
sex: male
bats: right
throws: right
positions: [shortstop]
heights: [{ date: 2025-10-06, in: 70.5 }, { date: 2026-02-16, in: 70.75 }]
masses: [{ date: 2025-10-06, lb: 158 }, { date: 2026-02-16, lb: 163 }]
game_bat: bb-33
joined: 2025-10-06
days: [mon, wed, fri]
gates:
  - { applies: { environment: machine, implement: game }, at_least: 61 }
consent:
  - { by: guardian, as: guardian, on: 2025-10-02, readers: [family, club], covers: [numbers, peers], until: 2030-12-31 }
recipients:
  - { id: home, reader: family, label: Home }
  - { id: summer-club, reader: club, label: Summer club, until: 2030-06-30 }
goals:
  - { metric: bat_speed, condition: { environment: machine, implement: game }, target: 63.5, by: 2026-02-20, set: 2025-10-08, why: The gain should show against a pitch }
  - { metric: bat_speed, condition: { environment: machine, implement: game }, target: 66, by: 2026-02-20, set: 2026-01-05, why: The first mark was behind him before the holidays }
  - { metric: exit_velocity, condition: { environment: machine, implement: game }, at_least: 84, share: 0.5, by: 2026-02-20, set: 2025-10-08, why: Hard contact more often than not }
  - { metric: attack_angle, condition: { environment: machine, implement: game }, window: [3, 13], share: 0.6, by: 2026-02-20, set: 2025-10-08, why: A path that meets the pitch for longer }
---

Asks good questions when he is given time. Do not fill the silence.
`,
  "assessment.md": `---
date: 2025-10-10
by: brandt
priorities:
  - { id: turn-first, text: Let the hips start the swing before the hands do, measures: [bat_speed], drills: [mirror-turns, dry-thirds] }
  - { id: meet-the-plane, text: A slightly rising path against the machine, measures: [attack_angle], drills: [tee-low-away, machine-set] }
---

Strong hands that went first. Off the tee it looked fine; against the machine he chopped at the ball and rolled it to the
left side. He knew it too, and could say so, which is half of the work.
`,
  "plan.md": `---
date: 2026-02-20
by: brandt
warm_up: { en: "Ten slow turns, then five easy swings off the tee", es: "Diez giros lentos y luego cinco swings suaves en el tee" }
own_cue: { en: "Buckle first, then the barrel", es: "Primero la hebilla, luego el barril" }
items:
  - { drill: mirror-turns, purpose: Keep the order of the turn, sets: 2, reps: 6, rest_s: 45, cue: Belt buckle first, days_per_week: 4, where: home }
  - { drill: tee-middle, purpose: The swing you compare yourself with, implement: game, sets: 3, reps: 5, rest_s: 60, cue: Finish tall, days_per_week: 3, where: home }
  - { drill: tee-low-away, purpose: Legs before hands on the far ball, implement: game, sets: 2, reps: 5, rest_s: 60, days_per_week: 2, where: home }
  - { drill: bat-ladder, purpose: Keep the swing while the bat changes, implement: bb-under, sets: 2, reps: 4, rest_s: 90, caution: Only when fresh, days_per_week: 1, where: supervised }
  - { drill: machine-set, purpose: Stay honest against a pitch, implement: game, sets: 3, reps: 5, rest_s: 90, caution: Helmet on and an adult at the machine, days_per_week: 2, where: supervised }
---

If a week is too full, keep the mirror and the machine and let the rest go. Pain is a reason to stop and to see a licensed
health professional.
`,
  "closing.md": `---
date: 2026-02-21
by: brandt
readers: [family]
---

Corwin,

in October your hands ran away from your legs. You heard it once, went home and stood in front of a mirror, and you kept
standing there when it was dark and cold and nobody was counting. Since then the bat has become quicker in every drill we
measure, and the part I like best is that it is quicker against the machine too: [[bat_speed machine: change]] there.
Plenty of hitters get faster at a ball that sits still.

What has not changed is that you still chase the high pitch when you are behind. That is a decision, not a swing, and
only games will teach it. Be patient with yourself in March; a first bad week says nothing about the winter.

Keep the mirror. Keep asking why. Thank you for being the one who swept the cage without being told.

Ilse
`,
  "notes/2025-10-24-hands-first.md": `---
date: 2025-10-24
author: brandt
kind: observation
about: [turn-first]
readers: [family]
---

He feels the difference in the mirror now and loses it as soon as a ball is there. That is the normal order of things.
`,
  "notes/2025-11-19-plan-change.md": `---
date: 2025-11-19
author: brandt
kind: plan-change
about: [bat-ladder, bat_speed]
readers: [family, club]
---

From now on the ladder never ends an evening: he always goes back to his own bat before he leaves.
`,
  "notes/2025-12-17-school.md": `---
date: 2025-12-17
author: teo
kind: observation
---

Tired from exams, said so himself. Shorter talks and longer rests for the rest of the month. Desk only.
`,
  "notes/2026-01-23-machine.md": `---
date: 2026-01-23
author: brandt
kind: milestone
about: [bat_speed, machine-set]
readers: [family, club]
---

First evening on which the machine rounds looked like the toss rounds. Same order, same finish, and the ball went on a line
to the middle.
`,
  "notes/2026-02-11-words.md": `---
date: 2026-02-11
author: athlete
kind: words
readers: [family]
---

I used to think about my hands the whole time. Now I think about the buckle and then about nothing.
`,
};
