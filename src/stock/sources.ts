/** A published source: its title, where it was read, and the edition or date seen. */
export interface Source {
  readonly title: string;
  readonly url: string;
  readonly edition: string;
}

/** What the ids beside the rows of this room stand for. */
export const SOURCES: ReadonlyMap<string, Source> = new Map([
  [
    'pwg',
    {
      title: 'PWG 5101.1 self-describing media names, as carried in the OpenPrinting CUPS source',
      url: 'https://github.com/OpenPrinting/cups',
      edition: 'commit 119f46f3',
    },
  ],
  [
    'wiki216',
    {
      title: 'ISO 216 (encyclopaedia article, mirror)',
      url: 'https://www.wiki3.en-us.nina.az/ISO_216.html',
      edition: 'undated',
    },
  ],
  [
    'psorg',
    { title: 'A Paper Sizes', url: 'https://www.papersizes.org/a-paper-sizes-tstb.htm', edition: 'undated' },
  ],
  [
    'ntg',
    {
      title:
        'Mailing-list post quoting DIN 476 (1976), DIN 476-1/-2 (1991), DIN 678-1 (1998), DIN 680 (1995)',
      url: 'https://mailman.ntg.nl/pipermail/ntg-context/2004/006483.html',
      edition: '2004',
    },
  ],
  ['tryck', { title: 'C-format', url: 'http://www.tryckipedia.se/c-format/', edition: 'undated' }],
  [
    'ruwiki',
    {
      title: 'Envelope format (Russian-language encyclopaedia article)',
      url: 'https://ru.m.wikipedia.org/wiki/%D0%A4%D0%BE%D1%80%D0%BC%D0%B0%D1%82_%D0%BA%D0%BE%D0%BD%D0%B2%D0%B5%D1%80%D1%82%D0%B0',
      edition: 'undated',
    },
  ],
  [
    'weblio',
    {
      title: 'RA and SRA series (encyclopaedia article, Japanese mirror)',
      url: 'https://www.weblio.jp/content/RA%E5%88%97%E3%81%8A%E3%82%88%E3%81%B3SRA%E5%88%97',
      edition: '2021-06-12',
    },
  ],
  [
    'pform',
    {
      title: 'RA and SRA untrimmed sizes',
      url: 'https://www.papierformate.com/ra-sra-nicht-zugeschnittene.htm',
      edition: 'undated',
    },
  ],
  [
    'wikiY14',
    {
      title: 'ANSI/ASME Y14.1 (encyclopaedia article)',
      url: 'https://en.wikipedia.org/wiki/ANSI/ASME_Y14.1',
      edition: 'mentions ASME Y14.1-2020',
    },
  ],
  ['fine', { title: 'Paper size guide', url: 'https://finecardstock.com/?p=21239', edition: 'undated' }],
  [
    'wnf',
    {
      title: 'Which envelope size fits a standard card',
      url: 'https://winenfood.com/what-envelope-size-fits-a-standard-card',
      edition: 'undated',
    },
  ],
  [
    'thoughtco',
    {
      title: 'Common envelope sizes and enclosure dimensions',
      url: 'https://www.thoughtco.com/envelope-design-styles-4122796',
      edition: 'undated',
    },
  ],
  [
    'eba',
    {
      title: 'Sizes of announcement envelopes in inches',
      url: 'https://ebaprinting.com/articles/invitation-printing-size-a10-a8-a7-a6-a2-envelope-inches/',
      edition: 'undated',
    },
  ],
  [
    'mensing',
    {
      title: 'Card and envelope sizes',
      url: 'https://www.lisamensing.com/card-and-envelope-sizes',
      edition: 'undated',
    },
  ],
  [
    'sylv',
    {
      title: 'Paper maker: basis weight page',
      url: 'https://shop.sylvamo.com/en/resources/calculator/basisweight',
      edition: 'undated',
    },
  ],
  [
    'ivex',
    {
      title: 'Basis weight / metric conversions',
      url: 'https://ivexsp.com/basis-weight-metric-conversions/',
      edition: 'undated',
    },
  ],
  [
    'xerox',
    {
      title: 'Xerox paper guide 701P28020',
      url: 'https://azmanual.top/manuals/227010/xerox-701p28020.html?page=54',
      edition: 'undated',
    },
  ],
  [
    'gould',
    {
      title: 'Paper merchant: basis weight explained',
      url: 'http://www.gouldpaper.com/public/calculators.asp',
      edition: 'undated',
    },
  ],
]);
