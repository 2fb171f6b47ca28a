/** What one system takes for a device, whatever ending follows. */
const DEVICE = /^(?:con|prn|aux|nul|com[0-9]|lpt[0-9])$/;

/** What the files of an envelope or a batch are called, before the ending: its name, but for a device’s, which gets a `_` that no name has. */
export const fileStem = (name: string): string => (DEVICE.test(name) ? `${name}_` : name);
