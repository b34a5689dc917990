// One figure of an answer brought to a target by changing one amount of the request: the computation is asked, no equation of it is known here.
const tries = 10;
// Answers are in hundredths of a part per million.
const near = 0.006;
const digits = 4;

/**
 * Secants, and then the figure a cook would write that does not pass the target.
 * @param {number} start an amount above zero.
 * @param {number} target
 * @param {(amount: number) => number | undefined} measure what the answer is at an amount; nothing where there is none.
 * @param {(amount: number) => boolean} [isAllowed] asked of the figure that is written.
 * @returns {number | undefined} the amount, above zero; nothing where none was found.
 */
export function seek(start, target, measure, isAllowed = () => true) {
  let [a, b] = [{ amount: start / 2, is: measure(start / 2) }, { amount: start, is: measure(start) }];
  for (let i = 0; i < tries && Math.abs(b.is - target) > near; i++) {
    const amount = b.amount + (target - b.is) * (b.amount - a.amount) / (b.is - a.is);
    if (!(amount > 0) || !Number.isFinite(amount)) {
      return undefined;
    }
    [a, b] = [b, { amount, is: measure(amount) }];
  }
  if (!(Math.abs(b.is - target) <= near)) {
    return undefined;
  }
  return [Number(b.amount.toPrecision(digits)), floor(b.amount), floor(b.amount * (1 - 10 ** -digits))]
    .find(amount => amount > 0 && measure(amount) <= target && isAllowed(amount));
}

function floor(amount) {
  const step = 10 ** (Math.floor(Math.log10(amount)) - digits + 1);
  return Number((Math.floor(amount / step) * step).toPrecision(digits));
}
