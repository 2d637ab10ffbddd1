export const facility = `---
name: Sleetholm Hitting Barn
season:
  name: Winter season
  start: 2025-10-06
  end: 2026-02-22
  phases:
    - { id: assess, label: { en: "Look and measure", es: "Mirar y medir" }, from: 2025-10-06, to: 2025-10-26 }
    - { id: build, label: { en: "Build the swing", es: "Construir el swing" }, from: 2025-10-27, to: 2025-12-14 }
    - { id: transfer, label: { en: "Take it to pitches", es: "Llevarlo a los lanzamientos" }, from: 2025-12-15, to: 2026-01-25 }
    - { id: game-speed, label: { en: "Game speed", es: "Ritmo de juego" }, from: 2026-01-26, to: 2026-02-22 }
  baseline: { from: 2025-10-06, to: 2025-10-26 }
  final: { from: 2026-02-02, to: 2026-02-22 }
  test_days: [2025-10-18, 2025-12-06, 2026-02-14]
contact: hello@sleetholm.example
site_url: https://sleetholm.example/winter/
notice:
  en: This is a demonstration. The facility, the people, the numbers and the texts are all invented.
  es: Esto es una demostración. El centro, las personas, los números y los textos son inventados.
languages: [en, es]
units: imperial
closed:
  - { from: 2025-11-27, to: 2025-11-28 }
  - { from: 2025-12-24, to: 2026-01-01 }
time_zone: America/Chicago
sites:
  - { id: barn, altitude_ft: 940, indoor: true, temperature_f: 61 }
  - { id: shed, altitude_ft: 940, indoor: true, temperature_f: 54 }
staff:
  - { id: brandt, name: Ilse Brandtmoor, role: head hitting coach }
  - { id: oda, name: Odalys Fennimark, role: fastpitch coach }
  - { id: teo, name: Teodor Wickersley, role: assistant }
groups:
  - { id: diamond, members: [corwin-tallowby, thaddeus-marchbane, bastian-oakhollow, rufus-ellingthorpe] }
  - { id: fastpitch, members: [juniper-brackwell, wrenna-stillbourne, marisol-quintalba] }
  - { id: grown, members: [desmond-farrowick, anselm-drovik] }
measures:
  - { metric: bat_speed, condition: { environment: tee, implement: game }, purpose: training }
  - { metric: bat_speed, condition: { environment: front-toss, implement: game }, purpose: training }
  - { metric: bat_speed, condition: { environment: machine, implement: game }, purpose: training }
  - { metric: exit_velocity, condition: { environment: tee, implement: game }, purpose: training }
  - { metric: exit_velocity, condition: { environment: machine, implement: game }, purpose: training }
  - { metric: attack_angle, condition: { environment: machine, implement: game }, purpose: training }
tests:
  - id: tee-ten
    metric: bat_speed
    condition: { environment: tee, implement: game, purpose: test }
    swings: 10
    warm_up: Own warm-up, then five easy swings off the tee
    rest_s: 60
    summary: mean
keep_until: 2027-06-30
cautions:
  - en: Which bats and balls may be used is decided by the league's rules, not by this report.
    es: Qué bates y pelotas se pueden usar lo decide el reglamento de la liga, no este informe.
  - en: The heavy and the long bat stay in the barn. They are swung only when rested, and only with one of us beside you.
    es: El bate pesado y el largo se quedan en el granero. Solo se usan con descanso y con uno de nosotros al lado.
---

Sleetholm Hitting Barn does not exist. It was made up, with everybody in it, to show what a season of measured swings
looks like when it is written down honestly.

We measure with a sensor on the bat and a radar behind the net, always from the same places. We compare a hitter with
that hitter's own earlier swings, in the same drill, with the same bat.
`;
