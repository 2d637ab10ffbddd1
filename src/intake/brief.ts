const SHOWN = 200;

/** What is written in a cell, short enough for a message and the ledger. */
export const brief = (text: string): string => (text.length > SHOWN ? `${text.slice(0, SHOWN)}…` : text);
