/** A word of the trade as one language says it. */
export interface TradeWord {
  /** As the page says it. */
  readonly word: string;
  readonly means: string;
  /** British, then American, where workshops of the two lands say it otherwise. */
  readonly pair?: readonly [british: string, american: string];
  /** Other forms that stand in the page's texts. */
  readonly forms?: readonly string[];
}

/** Words by their ids: each language tells all of them, with forms of its own. */
export const tradeWords = <Id extends string>(
  words: Readonly<Record<Id, TradeWord>>,
): Readonly<Record<Id, TradeWord>> => words;
