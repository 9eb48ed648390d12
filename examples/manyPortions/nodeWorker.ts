import { parentPort } from "node:worker_threads";
import { answer, type Message } from "./work.ts";

parentPort?.on("message", (message: Message) => {
  const { reply, move = [] } = answer(message) ?? {};
  if (reply) parentPort?.postMessage(reply, move);
});
