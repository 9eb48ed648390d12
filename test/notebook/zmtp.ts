import { connect, type Socket } from "node:net";

/*
 * As much of ZMTP 3.0 (rfc.zeromq.org/spec/23) as a client of a notebook kernel needs: the greeting
 * without security, the READY command, and messages of several frames.
 */

const MORE = 1;
const LONG = 2;
const COMMAND = 4;

/** One connection of a socket of the given type; `heed` gets each message that arrives. */
export class Connection {
  readonly #socket: Socket;
  readonly #heed: (frames: readonly Buffer[]) => void;
  #buffer = Buffer.alloc(0);
  #greeted = false;
  #frames: Buffer[] = [];
  #ready: () => void = () => {};

  private constructor(socket: Socket, heed: (frames: readonly Buffer[]) => void) {
    this.#socket = socket;
    this.#heed = heed;
    socket.on("data", (data) => this.#take(data));
  }

  /** Resolves once the other side has said that it is ready. */
  static open(
    port: number,
    type: "DEALER" | "SUB",
    heed: (frames: readonly Buffer[]) => void,
  ): Promise<Connection> {
    return new Promise((resolve, refuse) => {
      const socket = connect(port, "127.0.0.1");
      socket.once("error", refuse);
      socket.once("connect", () => {
        const connection = new Connection(socket, heed);
        connection.#ready = () => resolve(connection);
        socket.write(greeting());
        socket.write(frame(COMMAND, ready(type)));
      });
    });
  }

  send(frames: readonly Buffer[]): void {
    frames.forEach((each, i) => {
      this.#socket.write(frame(i < frames.length - 1 ? MORE : 0, each));
    });
  }

  close(): void {
    this.#socket.destroy();
  }

  #take(data: Buffer): void {
    this.#buffer = Buffer.concat([this.#buffer, data]);
    if (!this.#greeted) {
      if (this.#buffer.length < 64) return;
      this.#buffer = this.#buffer.subarray(64);
      this.#greeted = true;
    }
    for (let read = readFrame(this.#buffer); read; read = readFrame(this.#buffer)) {
      this.#buffer = this.#buffer.subarray(read.size);
      if (read.flags & COMMAND) {
        this.#ready();
        continue;
      }
      this.#frames.push(read.body);
      if (read.flags & MORE) continue;
      this.#heed(this.#frames);
      this.#frames = [];
    }
  }
}

function greeting(): Buffer {
  const bytes = Buffer.alloc(64);
  bytes[0] = 0xff;
  bytes[9] = 0x7f;
  bytes[10] = 3;
  bytes.write("NULL", 12);
  return bytes;
}

function ready(type: string): Buffer {
  return Buffer.concat([named("READY"), property("Socket-Type", type), property("Identity", "")]);
}

function named(name: string): Buffer {
  return Buffer.concat([Buffer.from([name.length]), Buffer.from(name)]);
}

function property(name: string, value: string): Buffer {
  const size = Buffer.alloc(4);
  size.writeUInt32BE(value.length);
  return Buffer.concat([named(name), size, Buffer.from(value)]);
}

function frame(flags: number, body: Buffer): Buffer {
  if (body.length < 256) return Buffer.concat([Buffer.from([flags, body.length]), body]);
  const head = Buffer.alloc(9);
  head[0] = flags | LONG;
  head.writeBigUInt64BE(BigInt(body.length), 1);
  return Buffer.concat([head, body]);
}

function readFrame(from: Buffer): { flags: number; body: Buffer; size: number } | undefined {
  const flags = from[0];
  if (flags === undefined || from.length < 2) return undefined;
  const long = (flags & LONG) !== 0;
  if (long && from.length < 9) return undefined;
  const length = long ? Number(from.readBigUInt64BE(1)) : (from[1] ?? 0);
  const start = long ? 9 : 2;
  if (from.length < start + length) return undefined;
  return { flags, body: Buffer.from(from.subarray(start, start + length)), size: start + length };
}
