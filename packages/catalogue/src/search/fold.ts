const unmarked: Readonly<Record<string, string>> = {
  ß: "ss",
  æ: "ae",
  œ: "oe",
  ø: "o",
  ł: "l",
  đ: "d",
  ð: "d",
  þ: "th",
};

/** Lower case without accents or punctuation, words one space apart, so that "Östersund" and "ostersund" meet. */
export function fold(text: string): string {
  return text
    .normalize("NFD")
    .replace(/[\p{M}'’]/gu, "")
    .toLowerCase()
    .replace(/[ßæœøłđðþ]/g, (letter) => unmarked[letter]!)
    .replace(/[^\p{L}\p{N}]+/gu, " ")
    .trim();
}
