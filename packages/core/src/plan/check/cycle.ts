/**
 * One loop for each knot of a directed graph (each strongly connected component with a loop; Tarjan 1972),
 * as the nodes along it, the first not repeated. Iterative, linear in nodes and edges; order of discovery.
 *
 * @param next  For each node the nodes its edges lead to.
 */
export function findLoops(next: readonly (readonly number[])[]): number[][] {
  const n = next.length;
  const index = new Int32Array(n).fill(-1);
  const low = new Int32Array(n);
  const component = new Int32Array(n).fill(-1);
  const edge = new Int32Array(n);
  const stack: number[] = [];
  const loops: number[][] = [];
  let counter = 0;
  let components = 0;

  for (let root = 0; root < n; root++) {
    if (index[root] !== -1) continue;
    const path = [root];
    index[root] = low[root] = counter++;
    stack.push(root);
    while (path.length > 0) {
      const node = path[path.length - 1] ?? 0;
      const out = next[node] ?? [];
      const at = edge[node] ?? 0;
      if (at < out.length) {
        edge[node] = at + 1;
        const to = out[at] ?? 0;
        if (index[to] === -1) {
          index[to] = low[to] = counter++;
          stack.push(to);
          path.push(to);
        } else if (component[to] === -1) low[node] = Math.min(low[node] ?? 0, index[to] ?? 0);
        continue;
      }
      path.pop();
      const parent = path[path.length - 1];
      if (parent !== undefined) low[parent] = Math.min(low[parent] ?? 0, low[node] ?? 0);
      if (low[node] !== index[node]) continue;
      const members: number[] = [];
      for (;;) {
        const member = stack.pop();
        if (member === undefined) break;
        component[member] = components;
        members.push(member);
        if (member === node) break;
      }
      if (members.length > 1 || out.includes(node))
        loops.push(shortestLoop(node, next, component, components));
      components++;
    }
  }
  return loops;
}

/** Shortest way from `from` back to itself inside its component, breadth first. */
function shortestLoop(
  from: number,
  next: readonly (readonly number[])[],
  component: Int32Array,
  inside: number,
): number[] {
  const before = new Map<number, number>();
  let frontier = [from];
  while (frontier.length > 0) {
    const reached: number[] = [];
    for (const node of frontier) {
      for (const to of next[node] ?? []) {
        if (to === from) {
          const loop = [node];
          for (let at = node; at !== from; ) {
            at = before.get(at) ?? from;
            loop.push(at);
          }
          return loop.reverse();
        }
        if (component[to] !== inside || before.has(to)) continue;
        before.set(to, node);
        reached.push(to);
      }
    }
    frontier = reached;
  }
  return [from];
}
