/**
 * A date or time form whose parts of two digits may be written with one: an export that says 3/10/2025 is meant by dd/MM/yyyy.
 * Parts that touch (`yyyyMMdd`) keep their width, which alone tells them apart.
 *
 * @param form in Luxon tokens
 * @example looseForm("dd/MM/yyyy HH:mm") // => "d/M/yyyy H:mm"
 */
export const looseForm = (form: string): string =>
  form.replace(/(?<![A-Za-z])(dd|MM|HH|hh)(?![A-Za-z])/g, (token) => token.charAt(0));
