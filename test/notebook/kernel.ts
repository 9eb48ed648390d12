import { type ChildProcess, spawn } from "node:child_process";
import { createHmac, randomUUID } from "node:crypto";
import { existsSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { root } from "../sources.ts";
import { Connection } from "./zmtp.ts";

/** What a cell gave: as a notebook file records it (nbformat 4). */
export type Output =
  | { readonly output_type: "stream"; readonly name: string; readonly text: string }
  | {
      readonly output_type: "execute_result" | "display_data";
      readonly data: Readonly<Record<string, unknown>>;
    }
  | { readonly output_type: "error"; readonly ename: string; readonly evalue: string };

const deno = join(root, "node_modules/.bin/deno");

/** Why no kernel runs here; nothing where one does. */
export const missing: string | undefined = existsSync(deno)
  ? undefined
  : "no deno for this machine in node_modules";

interface Message {
  readonly type: string;
  readonly parent: string | undefined;
  readonly content: Readonly<Record<string, unknown>>;
}

const DELIMITER = "<IDS|MSG>";

/**
 * Deno's own kernel, spoken to as a notebook does: the Jupyter messaging protocol, version 5.3
 * (jupyter-client.readthedocs.io), over its shell and iopub sockets. It fetches nothing.
 */
export class Kernel {
  readonly #process: ChildProcess;
  readonly #folder: string;
  readonly #key: string;
  readonly #heard: Message[] = [];
  #shell: Connection | undefined;
  #iopub: Connection | undefined;
  #noise = "";

  private constructor(process: ChildProcess, folder: string, key: string) {
    this.#process = process;
    this.#folder = folder;
    this.#key = key;
    for (const stream of [process.stdout, process.stderr]) {
      stream?.on("data", (data) => {
        this.#noise += String(data);
      });
    }
  }

  /** Starts one in a folder, which is where cells import from. */
  static async start(cwd: string): Promise<Kernel> {
    const folder = mkdtempSync(join(tmpdir(), "steelyard-kernel-"));
    const [shell = 0, iopub = 0, stdin = 0, control = 0, heartbeat = 0] = await freePorts(5);
    const key = randomUUID();
    const connection = join(folder, "connection.json");
    writeFileSync(
      connection,
      JSON.stringify({
        transport: "tcp",
        ip: "127.0.0.1",
        shell_port: shell,
        iopub_port: iopub,
        stdin_port: stdin,
        control_port: control,
        hb_port: heartbeat,
        signature_scheme: "hmac-sha256",
        key,
      }),
    );
    const kernel = new Kernel(
      spawn(deno, ["jupyter", "--kernel", "--conn", connection], {
        cwd,
        env: {
          ...process.env,
          DENO_DIR: join(folder, "cache"),
          DENO_NO_UPDATE_CHECK: "1",
          NO_COLOR: "1",
        },
      }),
      folder,
      key,
    );
    await kernel.#connect(shell, iopub);
    return kernel;
  }

  /** Runs a cell to its end, and gives back all that it shows. */
  async run(code: string): Promise<Output[]> {
    const id = this.#send("execute_request", {
      code,
      silent: false,
      store_history: true,
      user_expressions: {},
      allow_stdin: false,
      stop_on_error: true,
    });
    const idle = ({ type, content }: Message): boolean =>
      type === "status" && content.execution_state === "idle";
    await this.#until(() => this.#heard.some((m) => m.parent === id && idle(m)), "the cell's end");
    return this.#heard.filter((m) => m.parent === id).flatMap(outputOf);
  }

  async stop(): Promise<void> {
    this.#shell?.close();
    this.#iopub?.close();
    const ended = new Promise((done) => this.#process.once("exit", done));
    this.#process.kill();
    await ended;
    rmSync(this.#folder, { recursive: true, force: true });
  }

  async #connect(shell: number, iopub: number): Promise<void> {
    const heed = (frames: readonly Buffer[]): void => {
      const message = readMessage(frames);
      if (message) this.#heard.push(message);
    };
    this.#iopub = await this.#patiently(() => Connection.open(iopub, "SUB", heed));
    this.#iopub.send([Buffer.from([1])]);
    this.#shell = await this.#patiently(() => Connection.open(shell, "DEALER", () => {}));
    // A subscription takes a moment to count: ask until an answer is heard.
    await this.#until(() => {
      this.#send("kernel_info_request", {});
      return this.#heard.length > 0;
    }, "the kernel's first word");
  }

  #send(type: string, content: Readonly<Record<string, unknown>>): string {
    const id = randomUUID();
    const header = {
      msg_id: id,
      session: "test",
      username: "test",
      date: "",
      msg_type: type,
      version: "5.3",
    };
    const parts = [header, {}, {}, content].map((part) => Buffer.from(JSON.stringify(part)));
    const signature = createHmac("sha256", this.#key);
    for (const part of parts) signature.update(part);
    this.#shell?.send([Buffer.from(DELIMITER), Buffer.from(signature.digest("hex")), ...parts]);
    return id;
  }

  async #patiently<T>(attempt: () => Promise<T>): Promise<T> {
    for (let tries = 0; ; tries += 1) {
      try {
        return await attempt();
      } catch (error) {
        if (tries > 150 || this.#process.exitCode !== null) {
          throw new Error(`the kernel does not answer: ${this.#noise}`, { cause: error });
        }
        await pause(200);
      }
    }
  }

  async #until(done: () => boolean, what: string): Promise<void> {
    for (let tries = 0; !done(); tries += 1) {
      if (tries > 500 || this.#process.exitCode !== null) {
        throw new Error(`no sign of ${what}: ${this.#noise}`);
      }
      await pause(100);
    }
  }
}

function readMessage(frames: readonly Buffer[]): Message | undefined {
  const start = frames.findIndex((each) => each.toString() === DELIMITER);
  const [header, parent, , content] = frames
    .slice(start + 2)
    .map((each) => JSON.parse(each.toString()) as Record<string, unknown>);
  if (start < 0 || !header || !content) return undefined;
  const id = parent?.msg_id;
  return { type: String(header.msg_type), parent: typeof id === "string" ? id : undefined, content };
}

function outputOf({ type, content }: Message): Output[] {
  const { name, text, data, ename, evalue } = content;
  if (type === "stream") return [{ output_type: type, name: String(name), text: String(text) }];
  if (type === "error") return [{ output_type: type, ename: String(ename), evalue: String(evalue) }];
  if (type !== "execute_result" && type !== "display_data") return [];
  return [{ output_type: type, data: data as Readonly<Record<string, unknown>> }];
}

async function freePorts(count: number): Promise<number[]> {
  const servers = Array.from({ length: count }, () => createServer());
  const ports = await Promise.all(
    servers.map(
      (server) =>
        new Promise<number>((done) => {
          server.listen(0, "127.0.0.1", () => {
            const address = server.address();
            done(typeof address === "object" && address !== null ? address.port : 0);
          });
        }),
    ),
  );
  await Promise.all(servers.map((server) => new Promise((done) => server.close(done))));
  return ports;
}

function pause(milliseconds: number): Promise<void> {
  return new Promise((done) => setTimeout(done, milliseconds));
}
