import { useState } from 'react';

type TypedText = {
  readonly text: string;
  readonly setText: (text: string) => void;
  /** Notes that the field hands a value over, by the text that shows it. */
  readonly sends: (shown: string) => void;
};

/**
 * The text of a field that shows a value of the site. It follows the value when that changes from outside, unless `says` tells that it says the same in
 * other words; what the field itself has sent comes a moment later, when more may have been typed, and leaves it alone.
 */
export function useTypedText(shown: string, says: (text: string) => boolean = () => false): TypedText {
  const [text, setText] = useState(shown);
  const [followed, setFollowed] = useState(shown);
  const [sent, setSent] = useState<string | null>(null);
  if (followed !== shown) {
    setFollowed(shown);
    setSent(null);
    if (sent !== shown && !says(text)) setText(shown);
  }
  return { text, setText, sends: setSent };
}
