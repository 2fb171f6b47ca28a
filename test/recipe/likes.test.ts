import { describe, expect, test } from 'vitest';
import { spanText } from '../../src/text/span.js';
import { envelopesOf, findingsOf, resolveText } from '../support/resolve-text.js';

describe('like', () => {
  test('copies what is stated, itself or by its own like; what is stated here replaces it whole', () => {
    const envelope = envelopesOf(`units mm
      style far { ease: 4
        seam: 10
        tags: far, away }
      style near like far { seam: 11 }
      envelope e like near { card: A6
        tags: here }`)('e');
    expect(envelope.ease.value.width).toBe(4);
    expect(envelope.seam.value).toBe(11);
    expect(envelope.tags.value).toEqual(['here']);
  });

  test('says where a value came from', () => {
    const { ease, seam, card, step } = envelopesOf(`units mm
      style far { ease: 2 + 2 }
      style near like far { seam: 11 }
      envelope e like near { card: 148 x 105 }`)('e');
    expect(ease.origin).toMatchObject({ kind: 'inherited', from: 'far' });
    expect(spanText(ease.origin.span)).toBe('2 + 2');
    expect(seam.origin).toMatchObject({ kind: 'inherited', from: 'near' });
    expect(card.origin.kind).toBe('written');
    expect(spanText(card.origin.span)).toBe('148 x 105');
    expect(step.origin.kind).toBe('default');
    expect(spanText(step.origin.span)).toBe('e');
  });

  test('does not copy title and note', () => {
    const envelope = envelopesOf(`units mm
      envelope first { title: "First"
        note: "a", "b"
        card: A6 }
      envelope e like first { }`)('e');
    expect(envelope.title.value).toBe('e');
    expect(envelope.note.value).toEqual([]);
    expect(envelope.card.value.width).toBe(148);
  });

  test('the expects of every style in the chain hold; an envelope’s are not copied', () => {
    const { expects } = envelopesOf(`units mm
      style far { expect bare = 0 }
      envelope middle like far { card: A6
        expect crossing > 5 }
      style near like middle { expect closure > 9 }
      envelope e like near { expect blank > 200 }`)('e');
    expect(expects.map(({ name, from }) => [name, from])).toEqual([
      ['blank', null],
      ['closure', 'near'],
      ['bare', 'far'],
    ]);
  });

  test('a paper is like a paper, but for its title', () => {
    const { paper } = envelopesOf(`units mm
      paper thick { title: "Thick"
        weight: 200 gsm
        caliper: 0.3 }
      paper thin like thick { caliper: default }
      envelope e { card: A6
        paper: thin }`)('e');
    expect(paper.value).toMatchObject({ title: 'thin', caliper: null, weight: { value: 200 } });
  });
});

describe('default', () => {
  test('puts a property back as if it had been left out everywhere', () => {
    const envelope = envelopesOf(`units mm
      style house { seam: 10
        opens: end
        title: "House" }
      envelope e like house { card: A6
        seam: default
        opens: default
        title: default }`)('e');
    expect(envelope.seam).toMatchObject({ value: 12, origin: { kind: 'default' } });
    expect(envelope.opens.value).toBe('side');
    expect(envelope.title.value).toBe('e');
  });

  test('a seam put back leaves a farther blank its say', () => {
    const envelope = envelopesOf(`units mm
      style far { blank: 200 }
      style near like far { seam: 10 }
      envelope fixed like near { card: A6
        seam: default }
      envelope derived like near { card: A6 }`);
    expect(envelope('fixed').blank.value).toEqual({ width: 200, height: 200 });
    expect(envelope('derived').blank.value).toBeNull();
  });

  test('a card put back is missing', () => {
    const resolved = resolveText('units mm\nstyle s { card: A6 }\nenvelope e like s { card: default }');
    expect(findingsOf(resolved)).toEqual(['missing: e']);
  });
});

describe('what says one thing twice', () => {
  const both = (far: string, near: string) =>
    envelopesOf(`units mm\nstyle far { card: A5\n${far} }\nenvelope e like far { ${near} }`)('e');

  test('along a like the nearer wins, and the other is dropped', () => {
    expect(both('blank: 300', 'seam: 10')).toMatchObject({ blank: { value: null }, seam: { value: 10 } });
    expect(both('seam: 10', 'blank: 300').seam.origin.kind).toBe('default');
    expect(both('face: 230 x 160', 'ease: 4').face.value).toEqual({ width: 214, height: 152 });
    expect(both('ease: 4', 'face: 230 x 160').ease.value).toEqual({ width: 20, height: 12 });
    const shifted = both('seal-mark: 150\nbottom-mark: 140', 'shift: 4');
    expect(shifted).toMatchObject({
      shift: { value: 4 },
      sealMark: { value: null },
      bottomMark: { value: null },
    });
    const marked = both('shift: 4', 'seal-mark: 150\nbottom-mark: 140');
    expect(marked).toMatchObject({
      shift: { value: 0 },
      sealMark: { value: 150 },
      bottomMark: { value: 140 },
    });
  });

  test('one mark and a shift stand together', () => {
    expect(both('shift: 4', 'seal-mark: 150')).toMatchObject({
      shift: { value: 4 },
      sealMark: { value: 150 },
    });
  });
});

test('fifty blocks may stand above one another, and no more; the rest of the chain is quiet', () => {
  const chain = (length: number): string =>
    `units mm\nstyle s0 { card: iso-a5 }\n${Array.from({ length }, (_, index) => `style s${index + 1} like s${index} { }`).join('\n')}\nenvelope e like s${length} { }`;
  expect(resolveText(chain(49)).envelopes).toHaveLength(1);
  const beyond = resolveText(chain(60));
  expect(beyond.envelopes).toHaveLength(0);
  expect(findingsOf(beyond)).toEqual(['limit: s50']);
});
