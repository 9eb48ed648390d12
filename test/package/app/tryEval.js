/** Tries what the site's policy forbids, which then reports it: one report from a page, and one from its worker. */
export function tryEval() {
  try {
    return new Function('return "allowed"')();
  } catch {
    return "refused";
  }
}
