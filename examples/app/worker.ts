/** Works portions out beside the page, which stays free to move. */
import { SteelyardError } from "steelyard";
import { type Asked, portion, type Told } from "./portion.ts";

addEventListener("message", ({ data }: MessageEvent<Asked>) => postMessage(answer(data)));

function answer(asked: Asked): Told {
  try {
    return portion(asked);
  } catch (error) {
    if (!(error instanceof SteelyardError)) throw error;
    return { unclear: error.faults.map(({ message, hint }) => `${message}: ${hint}`) };
  }
}
