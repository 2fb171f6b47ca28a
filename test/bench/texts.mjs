// Recipes of any number, made up.

const HEADER = 'units in\nstyle house {\n  ease: 1/4\n  seam: 1/2\n  step: 1/16\n}\n';
const size = (index) => `${4 + (index % 5)} 1/2 x ${3 + (index % 3)} 1/4`;

const block = (type) => (index) =>
  `${type} tide-card-${index} like house {\n  title: "Tide card ${index}"\n  card: ${size(index)}\n}\n`;

const many = (one) => (count) => HEADER + Array.from({ length: count }, (_, index) => one(index)).join('');

export const recipes = many(block('envelope'));
export const styles = many(block('style'));

export const noReader = () => ({ kind: 'unreadable', reason: 'nothing is used' });
