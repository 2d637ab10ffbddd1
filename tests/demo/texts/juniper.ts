import type { Folder } from "../notes.ts";

/** Better in tosses, the same off the machine. */
export const juniper: Folder = {
  "profile.md": `---
name: Juniper Brackwell
aliases: ["Brackwell, J."]
born: 2010-01-30
sport: softball
level: high-school
sex: female
bats: right
throws: right
positions: [catcher, third base]
heights: [{ date: 2025-10-07, in: 65 }, { date: 2026-02-17, in: 65 }]
masses: [{ date: 2025-10-07, lb: 141 }, { date: 2026-02-17, lb: 143 }]
game_bat: fp-33
joined: 2025-10-07
days: [tue, thu, sat]
consent:
  - { by: guardian, as: guardian, on: 2025-10-01, readers: [family, club], covers: [numbers, peers], until: 2030-12-31 }
goals:
  - { metric: bat_speed, condition: { environment: front-toss, implement: game }, target: 59.5, by: 2026-02-20, set: 2025-10-09, why: A freer turn }
  - { metric: bat_speed, condition: { environment: machine, implement: game }, target: 57, by: 2026-02-20, set: 2025-10-09, why: The same turn with less time }
  - { metric: attack_angle, condition: { environment: machine, implement: game }, window: [2, 12], share: 0.65, by: 2026-02-20, set: 2025-10-09 }
---

Compares herself with her older cousin. Keep the talk on her own numbers.
`,
  "assessment.md": `---
date: 2025-10-11
by: oda
priorities:
  - { id: free-turn, text: Turn through the ball instead of stopping at it, measures: [bat_speed], drills: [soft-side, toss-firm] }
  - { id: time-to-decide, text: Get the foot down earlier against the machine, measures: [bat_speed, exit_velocity], drills: [machine-set, machine-bend] }
---

A careful swing: on time for everything, fast for nothing. She places the ball well and gives up speed for it. Against the
machine she starts late and then hurries.
`,
  "plan.md": `---
date: 2026-02-19
by: oda
warm_up: { en: "Ten slow turns, then five easy swings off the tee", es: "Diez giros lentos y luego cinco swings suaves en el tee" }
own_cue: { en: "Foot down before the ball is out", es: "El pie abajo antes de que salga la pelota" }
items:
  - { drill: machine-set, purpose: Foot down before the ball is out, implement: game, sets: 4, reps: 5, rest_s: 75, cue: Start with the feed, caution: Helmet on and an adult at the machine, days_per_week: 2, where: supervised }
  - { drill: machine-bend, purpose: Wait and still turn through, implement: game, sets: 2, reps: 6, rest_s: 75, caution: Helmet on and an adult at the machine, days_per_week: 1, where: supervised }
  - { drill: short-overhand, purpose: Read a hand instead of a wheel, implement: game, sets: 3, reps: 6, rest_s: 60, days_per_week: 2, where: supervised }
  - { drill: toss-firm, purpose: Keep what the winter gave you, implement: game, sets: 2, reps: 6, rest_s: 60, days_per_week: 1, where: supervised }
  - { drill: mirror-turns, purpose: The turn without a ball, sets: 2, reps: 6, days_per_week: 3, where: home }
---

The order is on purpose: the pitch first, while you are fresh.
`,
  "closing.md": `---
date: 2026-02-20
by: oda
readers: [family]
---

Juniper,

I would like to tell you that everything went up. It did not, and you would know if I pretended. With a tossed ball you
turn freely now, and it shows in the speed of your bat; that part is yours and was earned on a lot of cold Saturdays. Off
the machine the bat moves about as it did in October. The new swing is there, but it needs time that a pitch does not give
you yet.

This is common, and it is not a step back. We changed the movement first, and the timing has to catch up. So your card for
the spring begins with pitches and not with tosses. Tell your school coach that you are working on the early foot, and ask
for real arms whenever there is one to spare.

I am proud of how you asked for the hard rounds at the end.

Odalys
`,
  "notes/2025-10-30-soft.md": `---
date: 2025-10-30
author: oda
kind: observation
about: [soft-side, free-turn]
readers: [family]
---

With the soft balls she lets go. Nothing to protect, so nothing is held back. We stay there for a few weeks.
`,
  "notes/2025-12-04-toss.md": `---
date: 2025-12-04
author: oda
kind: milestone
about: [bat_speed, toss-firm]
readers: [family, club]
---

The free turn has arrived in the front toss. It is repeatable now, not one swing in ten.
`,
  "notes/2026-01-08-gap.md": `---
date: 2026-01-08
author: oda
kind: observation
about: [time-to-decide]
readers: [family, club]
---

A gap has opened between tosses and machine. The swing is the same on video until the foot comes down; from there on she
hurries. We work on the foot from now on, and look at the number later.
`,
  "notes/2026-01-22-order.md": `---
date: 2026-01-22
author: oda
kind: observation
about: [machine-set]
---

She is frustrated and hides it. Talked in the car park with her mother for two minutes. Desk only.
`,
  "notes/2026-02-12-words.md": `---
date: 2026-02-12
author: athlete
kind: words
readers: [family]
---

Off the machine it feels like I am answering before I have heard the question. Coach says that is the next thing.
`,
};
