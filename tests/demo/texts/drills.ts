export const drills = `---
drills:
  - id: tee-middle
    label: { en: "Tee, middle", es: "Tee al medio" }
    environment: tee
    purpose: { en: "The same swing at the same ball, so that we can compare days", es: "El mismo swing a la misma pelota para poder comparar días" }
    cue: { en: "Finish tall and look at the spot the ball left", es: "Termina alto y mira el lugar del que salió la pelota" }
    good_rep: { en: "The ball leaves on a line and the tee stays still", es: "La pelota sale en línea y el tee no se mueve" }
    aims:
      - { metric: launch_angle, window: [5, 25] }
  - id: tee-low-away
    label: { en: "Tee, low and away", es: "Tee bajo y afuera" }
    environment: tee
    purpose: { en: "Reach the far ball with the legs first", es: "Llegar a la pelota lejana primero con las piernas" }
    cue: { en: "Sit, then turn", es: "Siéntate y después gira" }
    good_rep: { en: "Balance kept until the ball hits the net", es: "Equilibrio hasta que la pelota toca la red" }
  - id: bat-ladder
    label: { en: "Bat ladder", es: "Escalera de bates" }
    environment: tee
    purpose: { en: "The same swing with bats that ask for different things", es: "El mismo swing con bates que piden cosas distintas" }
    cue: { en: "Let the bat change and the swing stay", es: "Cambia el bate y no el swing" }
    implements: [bb-over, bb-under, bb-short, bb-long, fp-over, fp-under, fp-short, fp-light-12u]
    caution: { en: "Light and heavy bats only fresh, never at the end of a long day", es: "Bates ligeros y pesados solo con fuerzas, nunca al final de un día largo" }
  - id: dry-thirds
    label: { en: "Dry swings in thirds", es: "Swings en seco por tercios" }
    environment: dry
    purpose: { en: "Learn how quick feels when there is nothing to hit", es: "Sentir la rapidez cuando no hay nada que golpear" }
    cue: { en: "Slow hands until the heel is down", es: "Manos tranquilas hasta que baja el talón" }
    caution: { en: "Room on all sides and a firm grip", es: "Espacio por todos lados y agarre firme" }
  - id: soft-side
    label: { en: "Soft balls from the side", es: "Pelotas blandas desde el lado" }
    environment: side-toss
    purpose: { en: "Swing freely at a ball that forgives", es: "Soltar el swing con una pelota que perdona" }
    balls: [soft-nine, soft-twelve]
    cue: { en: "Hit through two balls, not one", es: "Atraviesa dos pelotas y no una" }
  - id: toss-firm
    label: { en: "Firm front toss", es: "Lanzamiento corto de frente" }
    environment: front-toss
    purpose: { en: "Time a moving ball before the machine does it for real", es: "Medir una pelota en movimiento antes de la máquina" }
    cue: { en: "Be early with the foot and late with the hands", es: "El pie pronto y las manos tarde" }
    aims:
      - { metric: launch_angle, window: [5, 30] }
    caution: { en: "The feeder stays behind the screen", es: "Quien lanza se queda detrás de la pantalla" }
  - id: slap-run
    label: { en: "Slap on the run", es: "Slap en carrera" }
    environment: front-toss
    purpose: { en: "Put the ball where the infield is not", es: "Poner la pelota donde no está el cuadro" }
    cue: { en: "Shoulder closed until the ball is on the bat", es: "Hombro cerrado hasta el contacto" }
    balls: [sb-twelve]
  - id: machine-set
    label: { en: "Machine, set speed", es: "Máquina a velocidad fija" }
    environment: machine
    purpose: { en: "Find out what the swing is worth against a pitch", es: "Ver lo que vale el swing ante un lanzamiento" }
    cue: { en: "Start with the feed, not after it", es: "Empieza con la alimentación y no después" }
    caution: { en: "Helmet on, and an adult at the machine", es: "Casco puesto y un adulto en la máquina" }
  - id: machine-bend
    label: { en: "Machine, slower pitch", es: "Máquina con lanzamiento lento" }
    environment: machine
    purpose: { en: "Wait, and still swing hard", es: "Esperar y aun así batear fuerte" }
    cue: { en: "Stay over the back leg one beat longer", es: "Aguanta un tiempo más sobre la pierna de atrás" }
    caution: { en: "Helmet on, and an adult at the machine", es: "Casco puesto y un adulto en la máquina" }
  - id: mirror-turns
    label: { en: "Turns in front of the mirror", es: "Giros ante el espejo" }
    environment: dry
    purpose: { en: "See the turn that the eyes in the box never see", es: "Ver el giro que desde la caja no se ve" }
    cue: { en: "Belt buckle first", es: "Primero la hebilla" }
    feedback: { en: "mirror", es: "espejo" }
  - id: short-overhand
    label: { en: "Short overhand", es: "Lanzamiento por arriba corto" }
    environment: overhand
    purpose: { en: "A ball from a hand, with no device to look at", es: "Una pelota lanzada a mano y sin aparatos que mirar" }
    cue: { en: "Watch the wrist", es: "Mira la muñeca" }
---

Cues are ours. Where a drill helps one hitter and not the next, we change the drill, not the hitter.
`;
