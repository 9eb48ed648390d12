/** From here on a number is no longer whole in a double. */
const SAFE = 0x20_0000_0000_0000n;

/** So many leading binary digits are looked at at once: what a double holds. */
const WORD = 52;

/** From so many binary digits on, halves are taken together rather than words: found by trial. */
const LONG = 3000;

/**
 * The greatest common divisor of two numbers of 0 or above; of 0 and a number, the number.
 *
 * Short numbers by Euclid's steps in doubles. Of long ones the leading digits alone tell most of the
 * steps (Lehmer 1938), and of very long ones those of the halves, one after the other (Schönhage 1971):
 * Knuth, The Art of Computer Programming 2, 3rd edition 1997, 4.5.2 and 4.5.3. A step that leading digits
 * tell wrongly does no harm: each has an inverse in whole numbers, and so leaves the common divisors.
 */
export function gcd(a: bigint, b: bigint): bigint {
  let [x, y] = a < b ? [b, a] : [a, b];
  while (y >= SAFE) {
    const size = bits(x);
    const cut = BigInt(size < LONG ? size - WORD : size >> 1);
    const next = move(stepsOf(x >> cut, y >> cut), x, y);
    // Where the leading digits told nothing, one plain step does.
    [x, y] = next.x < x ? [next.x, next.y] : [y, x % y];
  }
  if (y === 0n) return x;
  let [m, n] = [Number(y), Number(x % y)];
  while (n !== 0) [m, n] = [n, m % n];
  return BigInt(m);
}

/** Several of Euclid's steps as one: `x` and `y` become `a x + b y` and `c x + d y`. */
type Steps = readonly [a: bigint, b: bigint, c: bigint, d: bigint];

/** Steps that take about half of the digits off both; `x` is not below `y`. */
function stepsOf(x: bigint, y: bigint): Steps {
  const size = bits(x);
  if (size <= WORD) return wordSteps(Number(x), Number(y));
  const taken = size < LONG ? WORD : size >> 1;
  const halves = size < LONG ? 1 : 2;
  let all: Steps = [1n, 0n, 0n, 1n];
  let at = { x, y };
  for (let half = 0; half < halves && at.y > 0n; half += 1) {
    const cut = BigInt(Math.max(0, bits(at.x) - taken));
    const moved = move(stepsOf(at.x >> cut, at.y >> cut), at.x, at.y);
    all = afterEachOther(all, moved.by);
    at = moved;
  }
  return all;
}

function wordSteps(x: number, y: number): Steps {
  let [a, b, c, d] = [1, 0, 0, 1];
  for (let [u, v] = [x, y]; v > 2 ** (WORD / 2); ) {
    const q = Math.floor(u / v);
    [u, v, a, b, c, d] = [v, u - q * v, c, d, a - q * c, b - q * d];
  }
  return [BigInt(a), BigInt(b), BigInt(c), BigInt(d)];
}

/** Both after the steps, brought to 0 or above and the larger first; and the steps that do that, too. */
function move(
  [a, b, c, d]: Steps,
  x: bigint,
  y: bigint,
): { readonly x: bigint; readonly y: bigint; readonly by: Steps } {
  const [u, v] = [a * x + b * y, c * x + d * y];
  const [p, q]: [bigint, bigint] = u < 0n ? [-a, -b] : [a, b];
  const [r, s]: [bigint, bigint] = v < 0n ? [-c, -d] : [c, d];
  const [m, n] = [u < 0n ? -u : u, v < 0n ? -v : v];
  return m < n ? { x: n, y: m, by: [r, s, p, q] } : { x: m, y: n, by: [p, q, r, s] };
}

function afterEachOther([e, f, g, h]: Steps, [a, b, c, d]: Steps): Steps {
  return [a * e + b * g, a * f + b * h, c * e + d * g, c * f + d * h];
}

/** How many binary digits, to the next four. */
function bits(a: bigint): number {
  return a.toString(16).length * 4;
}
