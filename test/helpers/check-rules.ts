import type { Job } from '../../src/job/job';
import type { Plan } from '../../src/output/plan/plan';
import type { Tables } from '../../src/tables/tables';

/**
 * A second, brute-force look at a finished plan, from its printed numbers alone: every rule of the design's sections 3 and 4
 * written out again without the program's own geometry. Returns what is broken, in words; empty when all holds.
 */
export function brokenRules(plan: Plan, job: Job, tables: Tables): string[] {
  const { bend, spine, effort, sheet, stations, backings } = plan;
  if (!bend || !spine || !effort || !sheet) return ['a section is missing from a plan without errors'];
  const broken: string[] = [];
  const must = (holds: boolean, what: string): void => {
    if (!holds) broken.push(what);
  };
  const eps = 1e-6;
  const degree = Math.PI / 180;
  const rules = tables.rules;

  // The form's cone from its printed ends.
  const sine = (bend.form.to - bend.form.from) / bend.length;
  const cosine = Math.sqrt(1 - sine * sine);
  const radius = (s: number): number => bend.form.from + ((bend.form.to - bend.form.from) * s) / spine.length;
  must(Math.abs(spine.length - bend.length * cosine) < eps, 'spine length is L·cos β');
  must(
    Math.abs(spine.widthFrom - 2 * bend.form.from) < eps && Math.abs(spine.widthTo - 2 * bend.form.to) < eps,
    'spine as wide as twice the radius',
  );

  // Stations.
  const span = (board: { at: number; thickness: number }): [number, number] => [
    board.at - board.thickness / 2,
    board.at + board.thickness / 2,
  ];
  for (const run of job.runs) {
    must(
      stations.some((station) => Math.abs(span(station)[0] - run.from * cosine) < 1e-5),
      `run ${run.name} has a station flush with its start`,
    );
    must(
      stations.some((station) => Math.abs(span(station)[1] - run.to * cosine) < 1e-5),
      `run ${run.name} has a station flush with its end`,
    );
  }
  const boards = tables.boards;
  const screwKinds = tables.screws;
  for (const station of stations) {
    const [low, high] = span(station);
    for (let step = 0; step <= 20; step++) {
      const s = low + ((high - low) * step) / 20;
      must(station.radius <= radius(s) + 1e-9 * radius(s), `${station.name} stands proud at ${s}`);
    }
    const touching = station.contact === 'from' ? low : high;
    must(Math.abs(station.radius - radius(touching)) < eps, `${station.name} touches at its contact face`);
    must(low >= -eps && high <= spine.length + eps, `${station.name} within the spine`);
    const expected = station.radius > rules.thirdScrewAbove ? 3 : 2;
    must(
      station.screws.length === expected ||
        (station.screws.length === 1 && plan.findings.some((finding) => finding.code === 'one-screw')),
      `${station.name} has its screws`,
    );
    for (const screw of station.screws) {
      const kind = screwKinds.find((row) => row.id === screw.size);
      if (!kind) {
        broken.push(`${station.name}: unknown screw ${screw.size}`);
        continue;
      }
      must(kind.lengths.includes(screw.length), `${station.name}: standard length`);
      const reach = screw.length - spine.thickness;
      must(
        Math.sqrt(station.radius ** 2 - screw.offset ** 2) - reach >= job.screws.cover - eps,
        `${station.name}: cover over the screw tip`,
      );
      must(reach >= rules.minBiteDiameters * kind.diameter - eps, `${station.name}: bite`);
      must(Math.abs(screw.pilotDepth - reach - 1) < eps, `${station.name}: pilot 1 mm deeper`);
      const longer = kind.lengths.filter((length) => length > screw.length)[0];
      must(
        longer === undefined ||
          Math.sqrt(station.radius ** 2 - screw.offset ** 2) - (longer - spine.thickness) < job.screws.cover,
        `${station.name}: a longer screw would do`,
      );
      must(
        [0, station.radius / 2].some((offset) => Math.abs(Math.abs(screw.offset) - offset) < eps),
        `${station.name}: screw at a quarter point or the middle`,
      );
      must(
        Math.abs(screw.offset) + kind.headDiameter / 2 <= radius(station.at) + eps,
        `${station.name}: head within the spine`,
      );
    }
  }

  // Nothing overlaps along the spine, on either face.
  const overlap = (a: [number, number], b: [number, number]): boolean => a[0] < b[1] - 1e-5 && b[0] < a[1] - 1e-5;
  for (const list of [stations, backings]) {
    list.forEach((a, index) =>
      list.slice(index + 1).forEach((b) => must(!overlap(span(a), span(b)), `${a.name} and ${b.name} overlap`)),
    );
  }
  const screwPoints = spine.screwHoles;
  screwPoints.forEach((a, index) => {
    for (const b of screwPoints.slice(index + 1)) {
      must(
        Math.hypot(a.at - b.at, a.offset - b.offset) >= (a.countersink + b.countersink) / 2 - eps,
        `screw heads of ${a.holds} and ${b.holds} overlap`,
      );
    }
    const covering = a.side === 'front' ? stations : backings;
    for (const board of covering) {
      must(
        a.at + a.countersink / 2 <= span(board)[0] + eps || a.at - a.countersink / 2 >= span(board)[1] - eps,
        `a head of ${a.holds} lies under ${board.name}`,
      );
    }
  });

  // Clamp holes: wood all round.
  const wood = job.clamps.wood;
  const edgeDistance = (at: number): number => {
    // Distance from a point of the centre line to the straight long edge through both printed half-widths.
    const [dx, dy] = [spine.length, (spine.widthTo - spine.widthFrom) / 2];
    return Math.abs(dx * (spine.widthFrom / 2) - -at * dy) / Math.hypot(dx, dy);
  };
  for (const [index, hole] of spine.clampHoles.entries()) {
    const name = `clamp hole ${index + 1}`;
    const half = hole.diameter / 2;
    must(hole.diameter >= rules.clampHoleMin - eps && hole.diameter <= job.clamps.hole + eps, `${name}: diameter`);
    must(edgeDistance(hole.at) - half >= wood - 1e-5, `${name}: wood to the long edge`);
    must(hole.at - half >= wood - 1e-5 && spine.length - hole.at - half >= wood - 1e-5, `${name}: wood to the ends`);
    for (const board of [...stations, ...backings]) {
      const [low, high] = span(board);
      must(
        low - hole.at - half >= wood - 1e-5 || hole.at - half - high >= wood - 1e-5,
        `${name}: wood to ${board.name}`,
      );
    }
    for (const other of spine.clampHoles.slice(index + 1))
      must(Math.abs(hole.at - other.at) - half - other.diameter / 2 >= wood - 1e-5, `${name}: wood to the next`);
    for (const screw of screwPoints) {
      must(
        Math.hypot(hole.at - screw.at, screw.offset) - half - screw.diameter / 2 >= wood - 1e-5,
        `${name}: wood to a screw hole of ${screw.holds}`,
      );
    }
  }

  // Effort and tipping.
  const governing = Math.max(...plan.runs.map((run) => run.moment));
  must(Math.abs(effort.moment - governing) <= 1e-9 * governing, 'the heaviest run governs');
  const { pull, hold } = plan;
  if (!pull || !hold) return [...broken, 'a plan without pull and hold'];
  must(effort.leverage === 0 || pull.with === 'bare', 'only bare hands need leverage');
  if (pull.with === 'bare')
    must(Math.abs(effort.lever - job.bend.legs.free - effort.leverage) < eps, 'lever is leg and leverage');
  // The pull is square to the leg at the hands, the leg bent: more than moment over lever, by no more than its turn makes of it.
  const turned = Math.max(pull.tail.loaded.from, pull.tail.loaded.to) * degree;
  const [least, most] = [effort.moment / effort.lever, effort.moment / effort.lever / Math.cos(turned)];
  must(effort.handForce >= least * (1 - 1e-3) && effort.handForce <= most * (1 + 1e-3), 'hands balance the moment');

  // Finished angle: what the form leaves of the wrap and what stays of both legs, at the mean of both ends.
  const opens = (end: 'from' | 'to'): number =>
    (bend.finished[end] / Math.cos(bend.coneHalfAngle.finished * degree) + sheet.thickness / 2) /
    (bend.form[end] / Math.cos(bend.coneHalfAngle.form * degree) + sheet.thickness / 2);
  const finishedCosine = Math.cos(bend.coneHalfAngle.finished * degree);
  for (const end of ['from', 'to'] as const) {
    const kept = pull.tail.stays[end] + hold.tail[end] + (plan.trials?.legsKeep[end] ?? 0);
    const wrapped = bend.wrap[end] / opens(end) + kept / finishedCosine;
    const legs = 2 * Math.asin(Math.sin((wrapped * degree) / 2) * finishedCosine);
    must(Math.abs(legs / (bend.angle * degree) - 1) < 1e-9, `the parts of the finished angle add up at ${end}`);
  }

  // Statics of the form, cut free at every mm of wrap on the way: no moment about the foot's rear edge is left over.
  const [f, b] = [effort.foot, spine.thickness];
  const run = plan.runs.reduce((heaviest, one) => (one.moment > heaviest.moment ? one : heaviest));
  const middle = ((run.from + run.to) / 2) * cosine;
  const [rho, high] = [radius(middle) / cosine + sheet.thickness / 2, radius(middle)];
  const tipping = (phi: number): number => {
    const force = effort.moment / (pull.lever + rho * (bend.wrap.chosen * degree - phi));
    const upPush = effort.moment / Math.min(job.bend.legs.held, f + b);
    return upPush * (f + b) + force * ((f + b) * Math.cos(phi) + high * Math.sin(phi));
  };
  const worst = Math.max(...Array.from({ length: 200 }, (_, k) => tipping((bend.wrap.chosen * degree * k) / 199)));
  // A taper's force sits a little nearer one end than its middle.
  const asked = (effort.clampForce / effort.safety) * (f + b / 2);
  must(Math.abs(asked / worst - 1) < 0.01, `clamps hold the form through the pull: ${asked} for ${worst}`);
  must(hold.fitted >= hold.clampForce / hold.safety, 'fitted clamps hold');
  must(hold.fitted === effort.clamps * job.clamps.rating, 'fitted clamps by their rating');
  must(rules.footDepths.includes(f), 'a standard foot');
  must(effort.clamps >= Math.max(2, Math.ceil(effort.clampForce / job.clamps.rating)), 'number of clamps');
  must(
    effort.clamps <= Math.max(2, Math.ceil(effort.clampForce / job.clamps.rating)) + 1,
    'no more clamps than needed, but for one',
  );
  must(spine.clampHoles.length + (spine.ears > 0 ? 2 : 0) >= effort.clamps, 'a place for every clamp');
  must(backings.length >= 1, 'at least one backing station');

  // Moment per width again, by Simpson's rule with the stress by bisection.
  const factor = sheet.factor;
  const planeModulus = sheet.modulus / (1 - sheet.poisson ** 2);
  const { hardening } = sheet;
  const first = hardening ? hardening.strength * hardening.initialStrain ** hardening.exponent : sheet.yield;
  const planeYield = (2 / Math.sqrt(3)) * first * factor;
  const stress = (strain: number): number => {
    if (planeModulus * strain <= planeYield) return planeModulus * strain;
    if (!hardening) return planeYield;
    const { strength, exponent, initialStrain } = hardening;
    const flow = (plastic: number): number =>
      (2 / Math.sqrt(3)) * factor * strength * (initialStrain + (2 / Math.sqrt(3)) * plastic) ** exponent;
    let [low, high] = [0, strain];
    for (let step = 0; step < 60; step++) {
      const middle = (low + high) / 2;
      if (flow(middle) / planeModulus + middle < strain) low = middle;
      else high = middle;
    }
    return flow(low);
  };
  const moment = (s: number): number => {
    const rho = radius(s) / cosine + sheet.thickness / 2;
    const steps = 200;
    let sum = 0;
    for (let step = 0; step < steps; step++) {
      const z = ((step + 0.5) / steps) * (sheet.thickness / 2);
      sum += 2 * stress(z / rho) * z * (sheet.thickness / 2 / steps);
    }
    return sum;
  };
  const margin = 1.01; // the midpoint rule above is good to well under 1 %

  // Sag over clear spans covered by a run, second moment of the arc by summation.
  const psi = bend.wrap.chosen * degree;
  const arcMoment = (rho: number): number => {
    const steps = 2000;
    let [mean, square] = [0, 0];
    for (let step = 0; step < steps; step++) {
      const y = rho * Math.cos(((step + 0.5) / steps) * psi);
      mean += y / steps;
      square += (y * y) / steps;
    }
    return (square - mean * mean) * rho * psi * sheet.thickness;
  };
  stations.slice(1).forEach((station, index) => {
    const before = stations[index];
    if (!before) return;
    const [low, high] = [span(before)[1], span(station)[0]];
    const covered = job.runs.some((run) => run.from * cosine <= low + 1e-5 && run.to * cosine >= high - 1e-5);
    if (!covered || high <= low) return;
    must(high - low <= job.stations.maxSpan + 1e-5, `span between ${before.name} and ${station.name}`);
    for (const s of [low, high]) {
      const rho = radius(s) / cosine + sheet.thickness / 2;
      const sag = (5 * (moment(s) / effort.lever) * (high - low) ** 4) / (384 * planeModulus * arcMoment(rho));
      must(sag <= job.stations.maxSag * margin, `sag ${sag} between ${before.name} and ${station.name}`);
    }
  });

  // Bow of the spine between neighbouring supports.
  const modulus = boards.find((board) => board.id === job.board.spine.stock)?.modulus ?? NaN;
  const supports = [...spine.clampHoles.map((hole) => hole.at), ...backings.map((backing) => backing.at)].sort(
    (x, y) => x - y,
  );
  supports.slice(1).forEach((to, index) => {
    const from = supports[index] ?? 0;
    const width = 2 * Math.min(radius(from), radius(to));
    const load = Math.max(moment(from), moment(to)) / effort.lever;
    const bow = (5 * load * (to - from) ** 4) / (384 * modulus * ((width * spine.thickness ** 3) / 12));
    must(bow <= rules.maxBow * margin, `spine bow ${bow} between ${from} and ${to}`);
  });

  // Wrap and swing: the free leg's inside line, walked from the round edge outward, against the backs of spine and backing.
  must(bend.wrap.chosen <= rules.maxWrapDegrees + eps, 'wrap within the half-disc');
  for (const extra of [0, rules.swingExtraDegrees * degree]) {
    const turn = psi + extra;
    if (turn <= Math.PI / 2) continue;
    for (const board of [
      ...backings.map((backing) => ({ at: backing.at, top: backing.width / 2, back: spine.thickness + backing.depth })),
      { at: spine.length / 2, top: radius(spine.length / 2), back: spine.thickness },
    ]) {
      const r = radius(board.at);
      for (let step = 0; step <= 100; step++) {
        const u = (effort.lever * step) / 100;
        const [ahead, up] = [r * Math.sin(turn) + u * Math.cos(turn), -r * Math.cos(turn) + u * Math.sin(turn)];
        const struck = ahead < -1e-6 && ahead > -board.back && up < board.top - 1e-6 && up > -board.top;
        must(!struck, `the free leg strikes what stands at ${board.at}`);
      }
    }
  }

  // Backing stations: as high as the spine at their narrower face, screws held.
  for (const backing of backings) {
    const [low, high] = span(backing);
    must(
      Math.abs(backing.width - 2 * Math.min(radius(low), radius(high))) < eps,
      `${backing.name} as high as the spine`,
    );
    must(backing.depth === effort.foot, `${backing.name} as deep as the foot`);
    must(low >= -eps && high <= spine.length + eps, `${backing.name} within the spine`);
    must(backing.screws.length >= 1, `${backing.name} has screws`);
  }
  return [...new Set(broken)];
}
