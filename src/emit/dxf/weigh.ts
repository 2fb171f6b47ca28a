import type { Dxfier, DxfInterface } from '@tarikjabiri/dxf';

/** Groups of a line weight (1/100 mm), and of what it may stand behind: the layer of an entity. */
const LINE_WEIGHT = 370;
const LAYER = 8;

/** Gives a layer or an entity a line weight in 1/100 mm. The library writes 0 for every layer, and none for an entity. */
export function weigh(record: DxfInterface, weight: number): void {
  const write = record.dxfy.bind(record);
  record.dxfy = (to) => {
    const push: Dxfier['push'] = (code, value) => {
      to.push(code, code === LINE_WEIGHT ? weight : value);
      if (code === LAYER) to.push(LINE_WEIGHT, weight);
    };
    write(Object.assign(Object.create(to) as Dxfier, { push }));
  };
}
