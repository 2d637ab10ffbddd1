/** What a page that was opened hands to the other scripts on it: the text of a page beside it, which is sealed as well. */
export interface SealedPages {
  read(address: string): Promise<string>;
}

declare global {
  interface Window {
    /** Only on a page that was sealed. */
    sealedPages?: SealedPages;
  }
}
