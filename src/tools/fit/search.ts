interface Corner {
  readonly point: readonly number[];
  readonly cost: number;
}

/** Point of least cost by the downhill simplex (Nelder & Mead 1965, Computer J. 7:308-313), from `start` in steps of `step`. */
export function searchLeast(
  cost: (point: readonly number[]) => number,
  start: readonly number[],
  step: number,
  rounds: number,
): Corner {
  const at = (point: readonly number[]): Corner => ({ point, cost: cost(point) });
  let corners = [start, ...start.map((_, index) => start.map((v, other) => (other === index ? v + step : v)))].map(at);
  for (let round = 0; round < rounds; round += 1) {
    corners.sort((a, b) => a.cost - b.cost);
    const [best, worst, second] = [corners[0]!, corners.at(-1)!, corners.at(-2)!];
    const others = corners.slice(0, -1);
    const middle = start.map((_, index) => others.reduce((sum, { point }) => sum + point[index]!, 0) / others.length);
    const along = (share: number) => at(middle.map((value, index) => value + share * (worst.point[index]! - value)));
    const mirrored = along(-1);
    if (mirrored.cost < best.cost) {
      const further = along(-2);
      corners = [...others, further.cost < mirrored.cost ? further : mirrored];
    } else if (mirrored.cost < second.cost) corners = [...others, mirrored];
    else {
      const nearer = along(mirrored.cost < worst.cost ? -0.5 : 0.5);
      if (nearer.cost < Math.min(mirrored.cost, worst.cost)) corners = [...others, nearer];
      else corners = [best, ...corners.slice(1).map(({ point }) => at(point.map((v, i) => (v + best.point[i]!) / 2)))];
    }
  }
  return corners.toSorted((a, b) => a.cost - b.cost)[0]!;
}
