/** What we use of the library, which has no types of its own. Its constructors are called without `new`. */
declare module 'railroad-diagrams' {
  interface Drawn {
    toString(): string;
  }
  const railroad: {
    Diagram(...items: readonly Drawn[]): Drawn & { format(padding: number): Drawn };
    Sequence(...items: readonly Drawn[]): Drawn;
    Choice(normal: number, ...items: readonly Drawn[]): Drawn;
    Optional(item: Drawn): Drawn;
    ZeroOrMore(item: Drawn): Drawn;
    Terminal(text: string): Drawn;
    NonTerminal(text: string): Drawn;
  };
  export = railroad;
}
