import { unaccented } from "./header-name.ts";

/** Words of exports -> ours, by field. English and Spanish words of the trade. */
const SENSES: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  side: {
    left: "l|lh|lhh|lefty|left handed|left hand|izq|izquierda|izquierdo|zurdo|zurda|i",
    right: "r|rh|rhh|righty|right handed|right hand|der|derecha|derecho|diestro|diestra|d",
  },
  pitcher_side: {
    left: "l|lh|lhp|lefty|izq|izquierda|izquierdo|zurdo|zurda",
    right: "r|rh|rhp|righty|der|derecha|derecho|diestro|diestra",
  },
  result: {
    hit: "contact|in play|fair|fair ball|struck|batted|golpe|contacto|en juego",
    foul: "foul ball|foul tip|fuera",
    miss: "whiff|swing and miss|swinging strike|missed|no contact|fallo|abanico|sin contacto",
    take: "taken|no swing|looking|called|sin swing|dejada",
  },
  environment: {
    tee: "t|batting tee|off tee|soporte",
    "side-toss": "soft toss|side flip|side flips|toss side|toque lateral|lanzamiento lateral",
    "front-toss": "flips|front flip|front flips|underhand toss|lanzamiento frontal",
    overhand: "bp|batting practice|coach pitch|arm|practica de bateo",
    machine: "pitching machine|maquina",
    live: "live ab|live bp|live pitching|live at bat|en vivo",
    game: "in game|juego|partido",
    dry: "dry swing|dry swings|air|no ball|en seco|al aire",
  },
  swing_type: {
    full: "normal|full swing|swing|completo",
    slap: "slapper",
    bunt: "toque",
    check: "check swing|checked|medio swing",
    practice: "dry|dry swing|practice swing|air",
  },
  purpose: {
    training: "practice|entrenamiento|practica",
    test: "testing|assessment|prueba|evaluacion",
    game: "juego|partido",
  },
  effort: { technical: "tecnico|easy|drill", max: "maximum|maximo|all out", game: "juego" },
  pitch_speed_at: { set: "machine setting|dial", release: "hand|out of hand|salida", plate: "home plate|home" },
  place: { facility: "cage|barn|jaula", home: "casa", club: "team|equipo", game: "juego|partido" },
};

const plain = (text: string): string =>
  unaccented(text)
    .replaceAll(/[\s_.-]+/g, " ")
    .trim();

const LOOKUP: ReadonlyMap<string, ReadonlyMap<string, string>> = new Map(
  Object.entries(SENSES).map(([field, words]) => [
    field,
    new Map(Object.entries(words).flatMap(([ours, theirs]) => theirs.split("|").map((word) => [word, ours] as const))),
  ]),
);

/** A value that a field may hold, and another name of it. */
export interface Allowed {
  readonly id: string;
  readonly label: string | null;
}

/**
 * The word of ours that a word of an export means; null when nobody can tell. Case, accents, and the choice between space,
 * hyphen and underscore make no difference; nearness makes no match.
 */
export function senseOf(field: string, text: string, allowed: readonly Allowed[]): string | null {
  const exact = allowed.find(({ id }) => id === text);
  if (exact) return exact.id;
  const wanted = plain(text);
  const same = allowed.filter(({ id, label }) => plain(id) === wanted || (label !== null && plain(label) === wanted));
  if (same.length > 0) return same.length === 1 ? (same[0]?.id ?? null) : null;
  const sense = LOOKUP.get(field)?.get(wanted) ?? null;
  return sense !== null && allowed.some(({ id }) => id === sense) ? sense : null;
}
