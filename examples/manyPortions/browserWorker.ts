import { answer, type Message } from "./work.ts";

/** As much of a worker's own scope as this needs: the examples are compiled without a browser's types. */
interface Scope {
  onmessage: (event: { readonly data: Message }) => void;
  postMessage(reply: unknown, move: ArrayBuffer[]): void;
}

const scope = globalThis as unknown as Scope;
scope.onmessage = ({ data }) => {
  const { reply, move = [] } = answer(data) ?? {};
  if (reply) scope.postMessage(reply, move);
};
