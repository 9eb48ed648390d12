/** Tells steps that speak of some line that there is, or of none, from those of nothing but lines that are left out. */
export function namesAny(has: (key: string) => boolean): (step: string) => boolean {
  return (step) => {
    const keys = [...step.matchAll(/\{([^{}]+)\}/g)].map(([, key = ""]) => key);
    return keys.length === 0 || keys.some(has);
  };
}
