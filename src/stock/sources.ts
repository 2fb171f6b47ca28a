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
  [
    'dmm23',
    {
      title: 'USPS Domestic Mail Manual 101, Physical Standards (retail)',
      url: '',
      edition: 'text marked Updated 7-9-23, seen as a quotation inside public sample data',
    },
  ],
  [
    'dmm21',
    {
      title: 'USPS Domestic Mail Manual 101 (archive)',
      url: 'https://pe.usps.com/Archive/NHTML/DMMArchive20210124/101.htm',
      edition: '2021-01-24',
    },
  ],
  [
    'dmm10',
    {
      title: 'USPS Domestic Mail Manual 101 (archive)',
      url: 'https://pe.usps.com/archive/html/dmmarchive20100104/101.htm',
      edition: '2010-01-04',
    },
  ],
  [
    'postcalc',
    {
      title: 'USPS postage pop-up: Letter',
      url: 'https://postcalc.usps.com/PopUps/Letter.htm',
      edition: 'undated',
    },
  ],
  [
    'pb22291',
    {
      title: 'USPS Postal Bulletin 22291, DMM 301.1.1 revision',
      url: 'http://about.usps.com/postal-bulletin/2010/pb22291/html/updt_001.htm',
      edition: '2010-08/09',
    },
  ],
  [
    'dmm301',
    {
      title: 'USPS Domestic Mail Manual 301 (archive)',
      url: 'http://pe.usps.gov/Archive/HTML/DMMArchive20080512/301.htm',
      edition: '2008-05-12',
    },
  ],
  [
    'pb22213',
    {
      title: 'USPS Postal Bulletin 22213: shape-based standards',
      url: 'https://about.usps.com/postal-bulletin/2007/html/pb22213/updt.3.2.html',
      edition: '2007',
    },
  ],
  [
    'navypc',
    {
      title: 'Postal Clerk training manual (NAVEDTRA 14317)',
      url: 'http://navyadministration.tpub.com/14317/css/Weight-And-Size-Limits-112.htm',
      edition: 'undated',
    },
  ],
  [
    'dms',
    {
      title: 'Shipping agent page on USPS international sizes',
      url: 'http://dmsdelivery.com/international/preparing-international-shipments.html',
      edition: 'undated',
    },
  ],
  [
    'ofcom',
    {
      title: 'Ofcom: how do I know whether my letter is a large letter',
      url: 'http://ask.ofcom.org.uk/help/post/largeletter',
      edition: 'undated',
    },
  ],
  [
    'antalis',
    {
      title: 'Royal Mail letter sizes (paper merchant help page)',
      url: 'https://www.antalis.co.uk/business/home/information-center/tools/royal-mail-letter-sizes.html',
      edition: 'undated',
    },
  ],
  [
    'guard08',
    {
      title: 'Newspaper article on letter size pricing',
      url: 'https://www.theguardian.com/money/2008/may/31/consumeraffairs',
      edition: '2008-05-31',
    },
  ],
  [
    'boxtopia',
    {
      title: 'Royal Mail parcel sizes guide 2024',
      url: 'https://www.boxtopia.co.uk/cardboard-box-size-guide/royal-mail-parcel-sizes',
      edition: '2024',
    },
  ],
  [
    'cpreq',
    {
      title: 'Canada Post: Lettermail size requirements',
      url: 'https://prd10.wsl.canadapost.ca/cpc/en/support/articles/lettermail/size-requirements.page',
      edition: 'undated',
    },
  ],
  [
    'cpsize',
    {
      title: 'Canada Post: letter weight and size',
      url: 'https://www.canadapost-postescanada.ca/cpc/en/personal/sending/letters-mail/letter-size.page',
      edition: 'undated',
    },
  ],
  [
    'cppg',
    {
      title: 'Canada Post customer guide: Lettermail',
      url: 'https://www.canadapost-postescanada.ca/tools/pg/manual/PGletterml-e.asp',
      edition: '2021-01-11',
    },
  ],
  [
    'cpratio',
    {
      title: 'Blog post on mailing square invitations in Canada',
      url: 'http://atimelesscelebration.blogspot.com/2008/02/mailing-suqare-envelopes.html',
      edition: '2008-02-14',
    },
  ],
  [
    'dpstn',
    {
      title: 'Newspaper explainer: Kompaktbrief and Standardbrief',
      url: 'https://www.stuttgarter-nachrichten.de/inhalt.was-ist-ein-kompaktbrief-mhsd.c9565573-4ded-4ded-992a-b38b1435ffe8.html',
      edition: 'c. 2022-24',
    },
  ],
  [
    'dphelp',
    {
      title: 'German help article on letter formats',
      url: 'https://www.helpster.de/briefformat-bei-der-post-so-frankieren-sie-richtig_103140',
      edition: 'undated',
    },
  ],
  [
    'dp25',
    {
      title: 'German press explainer on franking (syndicated copy)',
      url: 'https://zeit-heute.de/?p=181506',
      edition: '2025-02-12',
    },
  ],
  [
    'dpeasy',
    {
      title: 'German postage table',
      url: 'https://www.easynova.de/briefporto/briefumschlagformate-briefformate-briefformat/',
      edition: 'c. 2016',
    },
  ],
  [
    'dpsq',
    {
      title: 'German explainer: square envelopes need large-letter postage',
      url: 'https://frojeostern.com/wie-schwer-darf-ein-normaler-brief-sein',
      edition: 'undated',
    },
  ],
  [
    'apdom',
    {
      title: 'Australia Post: sending a letter within Australia',
      url: 'https://auspost.com.au/parcels-mail/sending-in-australia/domestic-letters',
      edition: '2024-2025',
    },
  ],
  [
    'aptips',
    {
      title: 'Australia Post education pages: posting tips',
      url: 'http://auspost.com.au/education/letterwriting/students/tips.html',
      edition: 'undated',
    },
  ],
  [
    'apcopy',
    {
      title: 'Third-party copy of an Australia Post price page',
      url: 'http://yuanzhou.org/regular-2.html',
      edition: '2024',
    },
  ],
  [
    'apcmp',
    {
      title: 'Australia Post: compare letter services',
      url: 'https://auspost.com.au/sending/send-within-australia/compare-letter-services',
      edition: 'c. 2020-21',
    },
  ],
  [
    'jpint',
    {
      title: 'Japan Post: international letters',
      url: 'https://www.post.japanpost.jp/int/service/letter_en.html',
      edition: 'undated',
    },
  ],
  [
    'jpota',
    {
      title: 'Japanese page on domestic letter sizes',
      url: 'http://otayoripost.net/ryokin/size.html',
      edition: 'c. 2017',
    },
  ],
  [
    'jpguide',
    {
      title: 'Guide to sending mail in Japan',
      url: 'https://mail.nipponbnb.com/ko/blog/how-to-send-mail-in-japan',
      edition: 'after 2024-10',
    },
  ],
  [
    'jpgem',
    {
      title: 'Japanese page on standard and non-standard mail',
      url: 'http://www.gem.hi-ho.ne.jp/sayopee/post/guide2.html',
      edition: '2014-04-01',
    },
  ],
  [
    'upukr',
    {
      title: 'Korea Post: size and weight of letter-post items',
      url: 'https://www.koreapost.go.kr/eng/subIndex/4424.do',
      edition: 'undated',
    },
  ],
  [
    'upucy',
    {
      title: 'Cyprus postal rates page',
      url: 'https://www.paphosfinder.com/index.php/cyprus-postal-rates',
      edition: 'undated',
    },
  ],
  [
    'upuhr',
    {
      title: 'Croatian Post: letter dimensions and weight',
      url: 'https://www.posta.hr/en/letter-dimensions-and-weight/6807',
      edition: 'undated',
    },
  ],
  [
    'upuin',
    {
      title: 'India Post: Letter',
      url: 'https://www.indiapost.gov.in/MBE/Pages/Content/Letter.aspx',
      edition: 'undated',
    },
  ],
  [
    'ibpt',
    {
      title: 'Belgian regulator: what is a standardised item',
      url: 'https://www.ibpt.be/en/consumers/faq/56-what-is-a-standardised-item',
      edition: 'undated',
    },
  ],
]);
