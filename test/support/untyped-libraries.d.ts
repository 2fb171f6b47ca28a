/** Reference libraries without types of their own; used by tests only. */
declare module 'fold' {
  const FOLD: {
    filter: { subdivideCrossingEdges_vertices(graph: object, epsilon: number): unknown };
    convert: { edges_vertices_to_faces_vertices(graph: object): unknown };
  };
  export default FOLD;
}

declare module 'rabbit-ear' {
  type LayerOrder = Readonly<Record<string, 1 | -1>>;
  const ear: {
    graph: {
      populate<Graph extends object>(graph: Graph): Graph;
      /** Lists what is wrong with a graph; `summary` is `valid` where nothing is. */
      validate(graph: object): { readonly summary: string };
      makeVerticesCoordsFlatFolded(graph: object, rootFace: number): [number, number][];
      /** As the fold angles say, in space. */
      makeVerticesCoordsFolded(graph: object, rootFace: number): [number, number, number][];
      /** Whether each face keeps its side up; by the coordinates that the graph has. */
      makeFacesWinding(graph: object): boolean[];
    };
    layer: {
      /**
       * Every way in which the faces of a flat-folded graph of convex faces can lie on each other: by pairs as `3 5`, -1
       * where the first lies below the second. One of each branch's alternatives, each holding the root's pairs too.
       */
      solver(graph: object): { readonly root: LayerOrder; readonly branches: LayerOrder[][] };
    };
  };
  export default ear;
}
