const OTHER_THAN_PLAIN = /[^\x20-\x7E]/;

// Two columns wide in a terminal: East Asian Wide and Fullwidth (UAX #11), and emoji (UTS #51).
const WIDE =
  /^(?:[\u2329\u232A\u2630-\u2637\u268A-\u268F\u2FF0-\u303E\u3041-\u3247\u3250-\u33FF\u4DC0-\u4DFF\uFE10-\uFE19\uFE30-\uFE6F\uFF01-\uFF60\uFFE0-\uFFE6\u{1D300}-\u{1D376}\u{1F200}-\u{1F2FF}\u{20000}-\u{3FFFD}]|(?![\u1160-\u11FF\uD7B0-\uD7FB\uFF61-\uFFDC])[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}\p{Script=Yi}\p{Script=Tangut}\p{Script=Nushu}\p{Script=Khitan_Small_Script}]|(?![\u{1F1E6}-\u{1F1FF}])\p{Emoji_Presentation}|[\u{1F1E6}-\u{1F1FF}]{2}|\p{Emoji}\uFE0F|\p{Emoji}[\u{1F3FB}-\u{1F3FF}])/u;
const VISIBLE = /[^\p{Default_Ignorable_Code_Point}\p{Cc}\p{Cf}\p{Mn}\p{Me}]/u;
/** Marks that stand beside their letter and so take a column: vowel signs of Indian scripts, half-width voicing. */
const BESIDE = /[\p{Mc}\uFF9E\uFF9F]/gu;

const STRETCH = 512;
const HALF = /[\uD800-\uDBFF]/;

let graphemes: Intl.Segmenter | undefined;

/** The characters of a text as a reader counts them: a letter with its accents is one. */
export function characters(text: string): string[] {
  if (!OTHER_THAN_PLAIN.test(text)) return [...text];
  graphemes ??= new Intl.Segmenter("en", { granularity: "grapheme" });
  const all: string[] = [];
  // A long text is taken in stretches, for the segmenter's time grows with the square of the length.
  for (let start = 0, length = STRETCH; start < text.length; ) {
    const cut = start + length + (HALF.test(text.charAt(start + length - 1)) ? 1 : 0);
    const stretch = Array.from(graphemes.segment(text.slice(start, cut)), (s) => s.segment);
    // The last character of a stretch may go on in the next; one that fills it needs a longer stretch.
    if (cut < text.length && stretch.length > 1) stretch.pop();
    else if (cut < text.length) {
      length *= 2;
      continue;
    }
    for (const character of stretch) {
      all.push(character);
      start += character.length;
    }
    length = STRETCH;
  }
  return all;
}

/** How many columns of a terminal one line of text takes. */
export function displayWidth(text: string): number {
  if (!OTHER_THAN_PLAIN.test(text)) return text.length;
  let width = 0;
  for (const character of characters(text)) width += characterWidth(character);
  return width;
}

function characterWidth(character: string): number {
  if (!VISIBLE.test(character)) return 0;
  const own = WIDE.test(character) ? 2 : 1;
  if (character.length === 1) return own;
  // What stands beside a letter may be wide itself, as the reading marks of Vietnamese Han characters are.
  const beside = character.slice(1).match(BESIDE) ?? [];
  return beside.reduce((width, mark) => width + (WIDE.test(mark) ? 2 : 1), own);
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
    if (used + more > width && used > 0) {
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
