/** What we read of two data modules of convert-units, which carry no types. */
declare module "convert-units/lib/definitions/temperature.js" {
  const temperature: {
    readonly _anchors: {
      /** Degrees Fahrenheit of degrees Celsius. */
      readonly metric: { readonly transform: (celsius: number) => number };
    };
  };
  export default temperature;
}

declare module "convert-units/lib/definitions/time.js" {
  const time: {
    /** Seconds in one. */
    readonly metric: { readonly [unit in "min" | "h"]: { readonly to_anchor: number } };
  };
  export default time;
}
