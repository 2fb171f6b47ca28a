/** Reference libraries without types of their own; used by tests only. */
declare module 'fold' {
  const FOLD: {
    filter: { subdivideCrossingEdges_vertices(graph: object, epsilon: number): unknown };
    convert: { edges_vertices_to_faces_vertices(graph: object): unknown };
  };
  export default FOLD;
}

declare module 'rabbit-ear' {
  const ear: {
    graph: {
      populate<Graph extends object>(graph: Graph): Graph;
      makeVerticesCoordsFlatFolded(graph: object, rootFace: number): [number, number][];
    };
  };
  export default ear;
}
