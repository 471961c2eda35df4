/**
 * The check digit of the digits before it: the last counts once, the one before it twice and so on, modulo 10
 * (Chemical Abstracts Service, "Check Digit Verification of CAS Registry Numbers").
 * @param digits the number without its check digit, hyphens allowed: `7732-18`.
 */
export function casCheckDigit(digits: string): number {
  const bare = digits.replaceAll('-', '');
  let sum = 0;
  for (let place = 1; place <= bare.length; place++) sum += place * Number(bare[bare.length - place]);
  return sum % 10;
}

/** Whether the text is a CAS number of two to seven digits, two digits and a check digit that is right. */
export function isCas(text: string): boolean {
  const match = /^([1-9]\d{1,6}-\d\d)-(\d)$/.exec(text);
  return match !== null && casCheckDigit(match[1]!) === Number(match[2]);
}
