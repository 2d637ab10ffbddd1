/** What keeps a workbook from being read. */
export class WorkbookFault extends Error {
  readonly code: "workbook-too-large" | "workbook-too-wide" | "workbook-with-macros" | "broken-workbook";
  readonly args: Readonly<Record<string, string | number>>;

  constructor(code: WorkbookFault["code"], args: Readonly<Record<string, string | number>> = {}) {
    super(code);
    this.code = code;
    this.args = args;
  }
}
