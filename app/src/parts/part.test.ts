import { describe, expect, it } from 'vitest';
import { part, placed, ready } from './part';

type Props = { readonly name: string };
const Card = ({ name }: Props) => name;

describe('a part of the program', () => {
  it('is fetched once, however often it is wanted, and is there at once from then on', async () => {
    let fetched = 0;
    const card = part<Props>(async () => {
      fetched += 1;
      return Card;
    });
    expect(placed(card, { name: 'Yard' }).element()).toBeNull();
    await Promise.all([card.bring(), card.bring()]);
    await card.bring();
    expect(fetched).toBe(1);
    expect(placed(card, { name: 'Yard' }, 'k').element()).toMatchObject({
      type: Card,
      key: 'k',
      props: { name: 'Yard' },
    });
  });

  it('that did not come is fetched again when it is wanted again', async () => {
    let network = false;
    const card = part<Props>(() =>
      network ? Promise.resolve(Card) : Promise.reject(new TypeError('offline')),
    );
    await expect(card.bring()).rejects.toThrow('offline');
    expect(card.component()).toBeNull();
    network = true;
    await card.bring();
    expect(card.component()).toBe(Card);
  });

  it('that came with those who show it is there before anybody asks', () => {
    expect(ready(Card).component()).toBe(Card);
  });
});
