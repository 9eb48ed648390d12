import { amount } from "steelyard";

/** Reading an amount and nothing else. */
export default (): string => amount("60 g").value.toString();
