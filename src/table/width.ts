const PLAIN = /^[\x20-\x7E]*$/;

// Two columns wide in a terminal: East Asian Wide and Fullwidth (UAX #11), and emoji.
const WIDE =
  /^(?:[\p{Emoji_Presentation}\u3000-\u303E\u3041-\u33FF\uFE30-\uFE6F\uFF01-\uFF60\uFFE0-\uFFE6\u2FF0-\u2FFF\u{1F200}-\u{1F2FF}]|(?![\uFF61-\uFFDC])[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}\p{Script=Bopomofo}\p{Script=Yi}\p{Script=Tangut}\p{Script=Nushu}\p{Script=Khitan_Small_Script}]|\p{Emoji}[\u{1F3FB}-\u{1F3FF}]?\uFE0F)/u;
const NO_WIDTH = /^[\p{Default_Ignorable_Code_Point}\p{M}\p{Cc}\p{Cf}]*$/u;

let graphemes: Intl.Segmenter | undefined;

/** The characters of a text as a reader counts them: a letter with its accents is one. */
export function characters(text: string): string[] {
  if (PLAIN.test(text)) return [...text];
  graphemes ??= new Intl.Segmenter("en", { granularity: "grapheme" });
  return Array.from(graphemes.segment(text), (s) => s.segment);
}

/** How many columns of a terminal one line of text takes. */
export function displayWidth(text: string): number {
  if (PLAIN.test(text)) return text.length;
  let width = 0;
  for (const character of characters(text)) width += characterWidth(character);
  return width;
}

function characterWidth(character: string): number {
  if (NO_WIDTH.test(character)) return 0;
  return WIDE.test(character) ? 2 : 1;
}

/** Text in lines of at most `width` columns (at least 2), broken at spaces, else inside a word. */
export function wrap(text: string, width: number): string[] {
  return text.split("\n").flatMap((line) => wrapLine(line.trim(), width));
}

function wrapLine(line: string, width: number): string[] {
  if (displayWidth(line) <= width) return [line];
  const lines: string[] = [];
  let current = "";
  let used = 0;
  for (const word of line.split(/ +/).flatMap((w) => chop(w, width))) {
    const more = displayWidth(word);
    if (current !== "" && used + 1 + more <= width) {
      current += ` ${word}`;
      used += 1 + more;
      continue;
    }
    if (current !== "") lines.push(current);
    current = word;
    used = more;
  }
  lines.push(current);
  return lines;
}

function chop(word: string, width: number): string[] {
  if (displayWidth(word) <= width) return [word];
  const pieces: string[] = [];
  let current: string[] = [];
  let used = 0;
  for (const character of characters(word)) {
    const more = characterWidth(character);
    if (used + more > width) {
      pieces.push(current.join(""));
      current = [];
      used = 0;
    }
    current.push(character);
    used += more;
  }
  pieces.push(current.join(""));
  return pieces;
}
