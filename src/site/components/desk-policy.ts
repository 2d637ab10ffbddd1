/**
 * What a page of the desk may load. A page opened from disk has no origin that `'self'` could mean in every browser, so the desk names the scheme
 * as well.
 */
export const DESK_POLICY =
  "default-src 'none'; style-src 'self' file:; font-src 'self' file:; img-src 'self' file:; base-uri 'none'; form-action 'none'";
