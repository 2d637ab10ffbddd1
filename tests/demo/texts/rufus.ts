import type { Folder } from "../notes.ts";

/** Four sessions: too few to say. No guardian has agreed yet, so the report stays on the desk. */
export const rufus: Folder = {
  "profile.md": `---
name: Rufus Ellingthorpe
aliases: [Rufus E.]
born: 2012-06-04
sport: baseball
level: middle-school
sex: male
bats: right
throws: right
positions: [second base, pitcher]
heights: [{ date: 2026-01-27, in: 62 }]
masses: [{ date: 2026-01-27, lb: 104 }]
game_bat: [{ id: bb-31y, from: 2026-01-27 }]
joined: 2026-01-27
days: [tue]
goals:
  - { metric: bat_speed, condition: { environment: tee, implement: game }, target: 56, by: 2026-02-20, set: 2026-01-27 }
  - { metric: launch_angle, condition: { environment: tee, implement: game }, window: [5, 25], share: 0.5, by: 2026-02-20, set: 2026-01-27 }
---

The consent form went home with him on the first evening and has not come back. Nothing goes out until it does.
`,
  "assessment.md": `---
date: 2026-01-27
by: teo
priorities:
  - { id: balance, text: Finish on two feet, measures: [bat_speed], drills: [tee-middle, mirror-turns] }
---

Came in late in the winter with a friend. Eager, a little off balance, hits the ball where it is thrown.
`,
  "plan.md": `---
date: 2026-02-18
by: teo
warm_up: { en: "Ten slow turns, then five easy swings off the tee", es: "Diez giros lentos y luego cinco swings suaves en el tee" }
own_cue: { en: "Finish on two feet", es: "Termina sobre los dos pies" }
items:
  - { drill: tee-middle, purpose: Finish on two feet, implement: game, sets: 2, reps: 5, rest_s: 60, cue: Finish tall, days_per_week: 2, where: home }
  - { drill: mirror-turns, purpose: Slow turns in balance, sets: 2, reps: 6, days_per_week: 2, where: home }
  - { drill: soft-side, purpose: Swing freely, implement: game, sets: 2, reps: 6, rest_s: 60, days_per_week: 1, where: home }
  - { drill: toss-firm, purpose: Early foot, implement: game, sets: 2, reps: 5, rest_s: 60, days_per_week: 1, where: supervised }
---

Other sports count as training too.
`,
  "closing.md": `---
date: 2026-02-19
by: teo
---

Rufus,

we have seen each other on four evenings, and I have enjoyed every one of them. Four evenings are a beginning. They are
not enough to say whether your swing became faster or slower, so this report does not say it, and I ask you not to read it
out of the dots either.

What I can say is what I saw. You listen, you try the thing that was asked before you try your own thing, and your balance
at the end of the swing was better on the last evening than on the first. That is something I saw with my eyes and not
something we measured.

If you come back in the autumn, these evenings will be your first page, and we will start from there. Until then: play, and
finish on two feet.

Teodor
`,
  "notes/2026-01-27-first.md": `---
date: 2026-01-27
author: teo
kind: observation
readers: [family]
---

First evening. Measured everything once so that there is a beginning to come back to.
`,
  "notes/2026-02-10-form.md": `---
date: 2026-02-10
author: teo
kind: observation
---

Asked again for the consent form. Friendly, no pressure. Desk only.
`,
  "notes/2026-02-17-balance.md": `---
date: 2026-02-17
author: teo
kind: observation
about: [balance]
readers: [family]
---

Stood still after most swings. He noticed it himself.
`,
};
