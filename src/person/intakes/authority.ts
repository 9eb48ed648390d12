import { fault, quote } from "../../number/error.ts";
import type { Authority } from "./table.ts";

const names: readonly string[] = ["uk", "us", "eu"] satisfies readonly Authority[];

/** Refuses what is no authority. Throws `authority-unknown`. */
export function checkAuthority(authority: Authority): void {
  if (typeof authority === "string" && names.includes(authority)) return;
  const hint = 'choose "uk", "us" or "eu"';
  throw fault("authority-unknown", `${quote(authority)} is not an authority`, hint, ["authority"]);
}
