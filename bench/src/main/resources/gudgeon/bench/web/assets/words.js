// What a page says by itself, in the language that it is read in: where that is not English the page brings the phrases along.
const phrases = JSON.parse(document.getElementById('words')?.textContent ?? '{}');

/** A phrase with its blanks, "{0}" and so on, filled. */
export function said(english, ...fills) {
  return (phrases[english] ?? english).replace(/\{(\d)\}/g, (blank, n) => fills[n]);
}

/** A number with so many decimals. */
export function number(value, places) {
  return new Intl.NumberFormat(document.documentElement.lang,
    { minimumFractionDigits: places, maximumFractionDigits: places, useGrouping: false }).format(value);
}
