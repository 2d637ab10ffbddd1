/** Stands in a sealed page where its ciphertext goes. */
export const SEALED_HERE = "the-sealed-text";

/** Of the element that holds it. */
export const SEALED_ID = "sealed";
