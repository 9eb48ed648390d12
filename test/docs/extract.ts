/** One example of a page or a docstring: a `ts` block, and the `text` block that follows it, if any. */
export interface Example {
  readonly file: string;
  /** The line of the file that its block opens on. */
  readonly line: number;
  readonly code: string;
  /** All that it prints, where a `text` block shows that. */
  readonly output?: string;
}

interface Block {
  readonly info: string;
  readonly line: number;
  readonly body: string;
  /** Whether only blank lines stand between it and the block before it. */
  readonly adjacent: boolean;
}

/**
 * The `ts` blocks of a markdown text. A block marked `ts continued` goes on where the one before it
 * ended, and may use its names. `first` is the number of the text's first line.
 */
export function examplesIn(markdown: string, file: string, first = 1): Example[] {
  const examples: { -readonly [K in keyof Example]: Example[K] }[] = [];
  let last = "";
  for (const { info, line, body, adjacent } of blocksIn(markdown)) {
    const before = examples.at(-1);
    if (info === "ts") {
      examples.push({ file, line: first + line, code: body });
    } else if (info === "ts continued") {
      if (!before) throw new Error(`${file}:${first + line}: continues nothing`);
      if (before.output !== undefined) before.output += "\n";
      before.code += `\n${body}`;
    } else if (info === "text" && adjacent && before && last.startsWith("ts")) {
      before.output = `${before.output ?? ""}${body}`;
    }
    last = info;
  }
  return examples;
}

function blocksIn(markdown: string): Block[] {
  const blocks: Block[] = [];
  const lines = markdown.split("\n");
  let end = -1;
  for (let i = 0; i < lines.length; i++) {
    const [, fence, info] = /^(`{3,})\s*([^`]+?)\s*$/.exec(lines[i] ?? "") ?? [];
    if (fence === undefined || info === undefined) continue;
    const adjacent = end >= 0 && lines.slice(end + 1, i).every((line) => line.trim() === "");
    const start = i + 1;
    for (i = start; i < lines.length && (lines[i] ?? "").trimEnd() !== fence; i++);
    blocks.push({ info, line: start - 1, body: lines.slice(start, i).join("\n"), adjacent });
    end = i;
  }
  return blocks;
}

/** The examples in the docstrings of a source file. */
export function docstringExamples(source: string, file: string): Example[] {
  return [...source.matchAll(/\/\*\*[\s\S]*?\*\//g)].flatMap(({ 0: comment, index }) => {
    const first = source.slice(0, index).split("\n").length;
    const text = comment
      .replace(/^\/\*\*|\*\/$/g, "")
      .split("\n")
      .map((line) => line.replace(/^\s*\* ?/, ""));
    return examplesIn(text.join("\n"), file, first);
  });
}
