/**
 * What trainers call the columns of a swing table, in English and Spanish: words of the trade, accents off, little words
 * left out. A name that holds every word of a phrase may mean the field; the longer phrase is the better reason.
 */
const PHRASES: Readonly<Record<string, readonly string[]>> = {
  athlete_id: [
    "athlete id|athlete|athlete name|player|player name|player id|hitter|hitter name|batter|batter name|name|full name|who",
    "atleta|jugador|jugadora|bateador|bateadora|nombre|nombre jugador|nombre bateador",
  ],
  date: ["date|day|when|session date|date time|datetime|timestamp", "fecha|dia|fecha hora"],
  time: ["time|clock|time day|clock time", "hora|reloj"],
  session: ["session|session id|session number", "sesion"],
  block: ["block|block number", "bloque"],
  environment: ["environment|setting|drill type|pitch source|feed type", "entorno|ambiente|tipo ejercicio"],
  drill: ["drill|drill name|exercise", "ejercicio"],
  implement: ["implement|bat|bat id|bat name|bat used", "bate|implemento"],
  ball: ["ball|ball type|ball kind", "pelota|bola|tipo pelota"],
  round: ["round|round number|set number", "ronda|vuelta|serie"],
  rep: [
    "rep|reps|rep number|repetition|swing number|swing no|swing #|swing id|hit number|hit no|hit #|#|no|number|count",
    "repeticion|numero|numero swing",
  ],
  side: [
    "side|stance|bat side|batting side|hitter side|batter side|batter hand|handedness|bats|box",
    "lado|lado bateo",
  ],
  swing_type: ["swing type|type swing|swing kind", "tipo swing"],
  result: ["result|outcome|contact result|hit result|swing result", "resultado"],
  purpose: ["purpose|aim session", "proposito"],
  effort: ["effort|intent|intensity", "esfuerzo|intensidad"],
  pitch_type: ["pitch type|type pitch|pitch kind|pitch", "tipo lanzamiento|lanzamiento|tipo pitcheo"],
  pitcher_side: ["pitcher side|pitcher hand|pitcher throws|throwing hand", "mano lanzador|lado lanzador"],
  pitch_speed: [
    "pitch speed|pitch velocity|pitch velo|incoming speed|pitch|machine speed|feed speed|release speed",
    "velocidad lanzamiento|velocidad pitcheo|velocidad maquina",
  ],
  pitch_speed_at: ["pitch speed at|speed read at"],
  pitch_distance: ["pitch distance|feed distance|release distance|throwing distance", "distancia lanzamiento"],
  spin: ["pitch spin|pitch spin rate|spin pitch", "giro lanzamiento|rotacion lanzamiento"],
  spin_axis: ["pitch spin axis|pitch axis", "eje lanzamiento"],
  ball_height: ["ball height|tee height|pitch height|contact height", "altura pelota|altura bola|altura contacto"],
  ball_across: ["ball across|across plate|plate side|horizontal location", "posicion horizontal"],
  contact_depth: ["contact depth|depth contact|depth", "profundidad contacto|profundidad"],
  bat_speed: [
    "bat speed|bat velocity|bat velo|barrel speed|barrel velocity|barrel velo|swing speed|swing velocity|bat",
    "barrel|velocidad bate|velocidad swing|velocidad barril",
  ],
  attack_angle: ["attack angle|angle attack|attack|bat angle|swing angle", "angulo ataque|ataque|angulo bate"],
  swing_time: [
    "swing time|time contact|time to contact|swing duration|swing length time",
    "tiempo swing|tiempo contacto|duracion swing",
  ],
  exit_velocity: [
    "exit velocity|exit velo|exit speed|ball speed|ball velocity|ball velo|ball exit speed|hit speed|exit|ev|ball",
    "velocidad salida|velocidad pelota|velocidad bola|velocidad golpe",
  ],
  launch_angle: [
    "launch angle|launch|vertical angle|vertical launch|vertical launch angle|elevation|la|ball angle",
    "angulo salida|exit angle|angulo vertical|elevacion|angulo lanzamiento",
  ],
  spray_angle: [
    "spray angle|spray|direction|horizontal angle|horizontal launch angle|horizontal direction|bearing|field angle",
    "direccion|angulo horizontal|angulo direccion",
  ],
  distance: [
    "distance|dist|carry|carry distance|hit distance|ball distance|flight distance|estimated distance",
    "distancia|distancia pelota|alcance",
  ],
  hit_spin: ["hit spin|ball spin|spin rate|batted spin|exit spin|backspin|spin", "giro|rotacion|giro pelota|efecto"],
  hit_spin_axis: ["hit spin axis|hit axis|spin axis|ball spin axis|axis", "eje giro|eje"],
  site: ["site|location|facility|building", "sede|lugar"],
  lane: ["lane|cage|tunnel|station", "carril|jaula|tunel"],
  device_bat: ["device bat|bat sensor|bat device", "sensor bate"],
  device_ball: ["device ball|ball sensor|ball device|radar", "sensor pelota"],
  place: ["place"],
  comment: ["comment|comments|note|notes|remark|remarks", "comentario|comentarios|nota|notas|observaciones"],
};

/** Words that mean the same here, whatever the language. */
const SAME: Readonly<Record<string, string>> = {
  velocity: "speed",
  velo: "speed",
  vel: "speed",
  velocidad: "speed",
  ang: "angle",
  angulo: "angle",
  dist: "distance",
  distancia: "distance",
  bate: "bat",
  barril: "barrel",
  bola: "ball",
  pelota: "ball",
  giro: "spin",
  rotacion: "spin",
  eje: "axis",
  salida: "exit",
  tiempo: "time",
  contacto: "contact",
  dir: "direction",
  direccion: "direction",
  swings: "swing",
};

/** One word for all that mean the same. */
export const sameWord = (word: string): string => (Object.hasOwn(SAME, word) ? (SAME[word] ?? word) : word);

/** Words that tell the kind of a measurement -> its canonical unit, and what it may be: which one, a person has to say. */
export const KINDS: Readonly<Record<string, { readonly unit: string; readonly fields: readonly string[] }>> = {
  speed: { unit: "mph", fields: ["bat_speed", "exit_velocity", "pitch_speed"] },
  angle: { unit: "deg", fields: ["launch_angle", "attack_angle", "spray_angle"] },
  spin: { unit: "rpm", fields: ["hit_spin", "spin"] },
};

/** Words of a column that sums up other swings, or says what was hoped for: no measurement of one swing. */
export const NOT_ONE_SWING: ReadonlySet<string> = new Set(
  "avg average mean median total sum std sd goal target rank percentile pct prev previous delta change grade score promedio media meta objetivo total".split(
    " ",
  ),
);
/** Words that leave open whether one swing or several are meant. */
export const PERHAPS_MORE: ReadonlySet<string> = new Set(
  "max maximum min minimum best top peak maximo minimo mejor".split(" "),
);

/** Words that stand for a measurement beside a unit, and for something else without. */
export const NEEDS_UNIT: ReadonlySet<string> = new Set([
  "bat",
  "ball",
  "barrel",
  "pitch",
  "exit",
  "attack",
  "launch",
  "spin",
]);

export interface Phrase {
  readonly field: string;
  readonly words: readonly string[];
}

/** Every phrase, cut into words. */
export const VOCABULARY: readonly Phrase[] = Object.entries(PHRASES).flatMap(([field, lists]) =>
  lists.flatMap((list) => list.split("|").map((phrase): Phrase => ({ field, words: phrase.split(" ").map(sameWord) }))),
);
