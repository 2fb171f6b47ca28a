/*
 * The DXF as a second library reads it, one in another language (Debian's python3-ezdxf): its auditor finds nothing to mend,
 * the unit is read as mm, outlines are closed and as long as they should be, layers look as on paper.
 */
import { spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { lettering } from '../../src/drawing/drawing.js';
import { dxf } from '../../src/emit/dxf/dxf.js';
import { renderDxf } from '../../src/emit/dxf/render-dxf.js';
import type { Job } from '../../src/emit/emitter.js';
import { halfLetter, job } from '../support/jobs.js';
import { emitOptions } from '../support/pdf-pages.js';
import { scratch } from '../support/scratch.js';
import { specJobs } from '../support/spec-jobs.js';

/** Says of each file named on the command line what it holds, as JSON. Curves are flattened to within 1e-4 mm. */
const READER = `
import json, sys, ezdxf
from ezdxf import path, recover, units

def said(name):
    document = ezdxf.readfile(name)
    recovered, second = recover.readfile(name)
    found = [document.audit(), second]
    def outline(entity):
        points = list(path.make_path(entity).flattening(0.0001))
        return {'closed': entity.closed, 'length': sum(a.distance(b) for a, b in zip(points, points[1:]))}
    space = document.modelspace()
    return {
        'mended': [str(entry.message) for audit in found for entry in audit.errors + audit.fixes],
        'unit': units.decode(document.units),
        'layers': {layer.dxf.name: [layer.dxf.linetype, layer.dxf.lineweight, layer.color] for layer in document.layers},
        'lineTypes': [line_type.dxf.name for line_type in document.linetypes],
        'outlines': [outline(entity) for entity in space.query('LWPOLYLINE[layer=="cut" | layer=="lining"]')],
        'used': sorted({entity.dxf.layer for entity in space}),
        'texts': [entity.plain_text() for entity in recovered.modelspace().query('TEXT')],
        'fonts': sorted({document.styles.get(entity.dxf.style).dxf.font for entity in space.query('TEXT')}),
    }

print(json.dumps([said(name) for name in sys.argv[1:]]))
`;

interface Said {
  readonly mended: readonly string[];
  readonly unit: string;
  readonly layers: Readonly<Record<string, readonly [lineType: string, weight: number, colour: number]>>;
  readonly lineTypes: readonly string[];
  readonly outlines: readonly { readonly closed: boolean; readonly length: number }[];
  readonly used: readonly string[];
  readonly texts: readonly string[];
  readonly fonts: readonly string[];
}

function said(files: readonly (Uint8Array | string)[]): readonly Said[] {
  const cwd = scratch({ 'reader.py': READER });
  const names = files.map((bytes, index) => {
    writeFileSync(join(cwd, `${index}.dxf`), bytes);
    return `${index}.dxf`;
  });
  const { stdout, stderr, status } = spawnSync('/usr/bin/python3', ['reader.py', ...names], {
    cwd,
    encoding: 'utf8',
  });
  expect(stderr).toBe('');
  expect(status).toBe(0);
  return JSON.parse(stdout) as readonly Said[];
}

const options = emitOptions();
const filesOf = async (of: Job): Promise<readonly Uint8Array[]> =>
  (await dxf.emit(of, options)).map(({ bytes }) => bytes);

test('every recipe of the studio, and a lining: nothing to mend, in mm, closed, on layers that are there', async () => {
  const recipes = Object.values(specJobs());
  const lined = halfLetter({}, { liner: 5 });
  const files = (await Promise.all([...recipes, lined].map(filesOf))).flat();
  const all = said(files);
  expect(all.length).toBeGreaterThanOrEqual(16);
  for (const { mended, unit, layers, lineTypes, outlines, used } of all) {
    expect(mended).toEqual([]);
    expect(unit).toBe('mm');
    expect(outlines.map(({ closed }) => closed)).toEqual([true]);
    expect(Object.keys(layers)).toEqual(expect.arrayContaining([...used]));
    for (const layer of used) expect(lineTypes).toContain(layers[layer]?.[0]);
  }
});

test('outlines are as long as they should be, arcs included', async () => {
  const folded = { bottom: 'folded', seal: 'folded' } as const;
  const flap = { kind: 'rounded', radius: 15 } as const;
  const [pointed, rounded] = said([
    ...(await filesOf(halfLetter({}, { corners: folded }))),
    ...(await filesOf(halfLetter({}, { corners: folded, flap }))),
  ]);
  // By hand: 4 × 11 1/4 in; a quarter circle of 15 mm in place of two stretches of 15 mm.
  expect(pointed?.outlines[0]?.length).toBeCloseTo(45 * 25.4, 4);
  expect(rounded?.outlines[0]?.length).toBeCloseTo(45 * 25.4 - 30 + (Math.PI / 2) * 15, 3);
});

test('layers look as they do on paper', async () => {
  const corners = { bottom: 'notched', seal: 'notched' } as const;
  const [box] = said(await filesOf(job({ depth: 6, corners })));
  // Wide and narrow lines of 0.5 and 0.25 mm, in 1/100 mm; colours by index: 7 black, 5 blue, 3 green, 2 yellow.
  expect(box?.layers).toMatchObject({
    cut: ['Continuous', 50, 7],
    score: ['score', 25, 5],
    'second-score': ['second-score', 25, 3],
    glue: ['glue', expect.any(Number), 2],
    dimension: ['Continuous', 13, 7],
  });
  expect(box?.fonts).toEqual(['SourceSans3_400Regular.ttf', 'SourceSans3_600SemiBold.ttf']);
});

// Two per cent signs are left to the other tests: this library knows no code for one.
test('text is read as it was meant', async () => {
  const texts = ['½ × 11 ¼ in → Føroyar 潮 \u{1f41a}', '100 %', 'M^J, ^I', '\\U+00B0', '\\P \\L'];
  const drawing = texts.map((text, row) => lettering(text, { x: 0, y: 6 * row }, 4));
  const [file] = said([await renderDxf({ drawing, width: 100, height: 40 }, () => 10)]);
  expect(file?.mended).toEqual([]);
  expect(file?.texts).toEqual(texts);
});
