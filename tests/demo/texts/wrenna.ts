import type { Folder } from "../notes.ts";

/** A real drop after weeks away. */
export const wrenna: Folder = {
  "profile.md": `---
name: Wrenna Stillbourne
aliases: [W. Stillbourne]
born: 2005-11-02
sport: softball
level: college
sex: female
bats: left
throws: right
positions: [outfield]
heights: [{ date: 2025-10-06, in: 66 }]
masses: [{ date: 2025-10-06, lb: 139 }, { date: 2026-01-19, lb: 137 }]
game_bat: [{ id: fp-32, from: 2025-10-06 }]
joined: 2025-10-06
days: [mon, wed, fri]
away:
  - { from: 2025-12-12, to: 2026-01-18, kind: travel, say: a study trip abroad without a cage }
consent:
  - { by: self, as: self, on: 2025-10-04, readers: [family, club], covers: [numbers] }
goals:
  - { metric: bat_speed, condition: { environment: machine, implement: game }, target: 61, by: 2026-02-20, set: 2025-10-08 }
  - { metric: exit_velocity, condition: { environment: machine, implement: game }, target: 75, by: 2026-02-20, set: 2025-10-08 }
  - { metric: attack_angle, condition: { environment: machine, implement: game }, window: [0, 10], share: 0.6, by: 2026-02-20, set: 2025-10-08 }
---

Slaps from the left side, swings away when the infield comes in. Both are hers; do not let the one eat the other.
`,
  "assessment.md": `---
date: 2025-10-10
by: oda
priorities:
  - { id: two-swings, text: A slap and a full swing that start the same, measures: [bat_speed], drills: [slap-run, toss-firm] }
  - { id: full-speed, text: Keep the full swing full, measures: [bat_speed, exit_velocity], drills: [tee-middle, machine-set] }
---

Quick feet and a slap that is ready for games. The full swing borrows too much from it: she leaves the box before she has
hit the ball.
`,
  "plan.md": `---
date: 2026-02-20
by: oda
warm_up: { en: "Ten slow turns, then five easy swings off the tee", es: "Diez giros lentos y luego cinco swings suaves en el tee" }
own_cue: { en: "Shoulder closed, then go", es: "Hombro cerrado, y luego ve" }
items:
  - { drill: tee-middle, purpose: Bring the full swing back in peace, implement: game, sets: 3, reps: 5, rest_s: 75, cue: Finish tall, days_per_week: 3, where: home }
  - { drill: dry-thirds, purpose: Quick without a ball, implement: fp-under, sets: 2, reps: 5, rest_s: 90, caution: Room on all sides, days_per_week: 2, where: home }
  - { drill: slap-run, purpose: Shoulder closed on the run, implement: game, sets: 2, reps: 5, rest_s: 60, days_per_week: 2, where: supervised }
  - { drill: machine-set, purpose: Back to pitches step by step, implement: game, sets: 3, reps: 4, rest_s: 90, caution: Helmet on, days_per_week: 2, where: supervised }
---

Come back slowly. There is no prize for doing the missed weeks twice.
`,
  "closing.md": `---
date: 2026-02-20
by: oda
readers: [family]
---

Wrenna,

the autumn was steady and good. Then came the weeks abroad, and since you are back your bat has been slower than before
you left, in every drill. You felt it on the first evening and said so before I did. The report says the same, and I left
nothing out.

I cannot tell you from these numbers how long the way back is. What I see is that the movement is all there and that the
slap has kept its timing. The few weeks since the trip are too short to show a direction. Give the full swing quiet work
off the tee before you ask it to meet a pitch.

Please do not try to catch up in a hurry. If anything hurts, stop, and see a licensed health professional.

You chose a once-in-a-life trip over a winter of swings. I would have chosen it too.

Odalys
`,
  "notes/2025-11-07-slap.md": `---
date: 2025-11-07
author: oda
kind: observation
about: [slap-run, two-swings]
readers: [family, club]
---

Slap and full swing now begin with the same step. An infielder has to guess for longer.
`,
  "notes/2025-12-08-before.md": `---
date: 2025-12-08
author: oda
kind: observation
readers: [family]
---

Last evening before the trip. She takes a light bat along, if there is a wall to swing beside.
`,
  "notes/2026-01-19-back.md": `---
date: 2026-01-19
author: oda
kind: observation
about: [bat_speed]
readers: [family, club]
---

Back today. The swing looks like hers and the bat is slower, and she knows it. Nothing heavy for now.
`,
  "notes/2026-01-21-plan.md": `---
date: 2026-01-21
author: oda
kind: plan-change
about: [bat-ladder]
readers: [family]
---

The heavy bat waits until the full swing feels like her own again.
`,
  "notes/2026-02-13-words.md": `---
date: 2026-02-13
author: athlete
kind: words
readers: [family]
---

It is annoying and it was worth it. The timing is mine again, the speed is on its way.
`,
};
