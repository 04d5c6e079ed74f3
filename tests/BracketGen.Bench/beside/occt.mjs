// Builds the solid of a boundary with Open CASCADE, faces sewn together, and writes it as STEP. Says as JSON how long that took.
// Usage: node occt.mjs BOUNDARY.json OUT.step RUNS (npm ci --ignore-scripts in tests/readers first)
import fs from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';

const readers = path.resolve(import.meta.dirname, '../../readers/node_modules/opencascade.js/dist/node.js');
const { default: openCascade } = await import(pathToFileURL(readers));
const oc = await openCascade({ module: { print: () => {}, printErr: () => {} } });
const [boundary, out, runs] = [JSON.parse(fs.readFileSync(process.argv[2], 'utf8')), process.argv[3], Number(process.argv[4])];

const point = ([x, y, z]) => new oc.gp_Pnt_3(x, y, z);
const direction = ([x, y, z]) => new oc.gp_Dir_4(x, y, z);
const dot = (a, b) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const minus = (a, b) => a.map((v, i) => v - b[i]);

function edgeOf(edge, corners) {
  if (edge.kind === 'line') {
    return new oc.BRepBuilderAPI_MakeEdge_2(corners[edge.start], corners[edge.end]).Edge();
  }
  const circle = new oc.gp_Circ_2(new oc.gp_Ax2_2(point(edge.centre), direction(edge.axis), direction(edge.towards)), edge.radius);
  return edge.start === edge.end
    ? new oc.BRepBuilderAPI_MakeEdge_8(circle).Edge()
    : new oc.BRepBuilderAPI_MakeEdge_11(circle, corners[edge.start], corners[edge.end]).Edge();
}

// From which angle to which an arc runs about a cylinder's axis.
function turnOf(arc, cylinder) {
  const side = [0, 1, 2].map((i) => cylinder.axis[(i + 1) % 3] * cylinder.towards[(i + 2) % 3] - cylinder.axis[(i + 2) % 3] * cylinder.towards[(i + 1) % 3]);
  const angle = (corner) => Math.atan2(dot(minus(corner, cylinder.point), side), dot(minus(corner, cylinder.point), cylinder.towards));
  const ends = [arc.start, arc.end].map((corner) => angle(boundary.corners[corner]));
  const [from, to] = dot(arc.axis, cylinder.axis) > 0 ? ends : ends.reverse();
  return [from, to > from ? to : to + 2 * Math.PI];
}

function faceOf(face, edges) {
  const whole = face.loops.every((loop) => loop.length === 1 && boundary.edges[loop[0].edge].start === boundary.edges[loop[0].edge].end);
  if (face.kind === 'cylinder') {
    const cylinder = new oc.gp_Cylinder_2(new oc.gp_Ax3_3(point(face.point), direction(face.axis), direction(face.towards)), face.radius);
    const arcs = face.loops.flat().map((use) => boundary.edges[use.edge]).filter((edge) => edge.kind === 'circle');
    const heights = arcs.map((arc) => dot(minus(arc.centre, face.point), face.axis));
    const [from, to] = whole ? [0, 2 * Math.PI] : turnOf(arcs[0], face);
    return new oc.BRepBuilderAPI_MakeFace_10(cylinder, from, to, Math.min(...heights), Math.max(...heights)).Face();
  }
  const plane = new oc.gp_Pln_2(new oc.gp_Ax3_3(point(face.point), direction(face.normal), direction(face.x)));
  const made = new oc.BRepBuilderAPI_MakeFace_16(plane, wireOf(face.loops[0], edges), true);
  for (const loop of face.loops.slice(1)) {
    made.Add(wireOf(loop, edges));
  }
  return made.Face();
}

function wireOf(loop, edges) {
  const wire = new oc.BRepBuilderAPI_MakeWire_1();
  for (const use of loop) {
    wire.Add_1(use.forward ? edges[use.edge] : oc.TopoDS.Edge_1(edges[use.edge].Reversed()));
  }
  return wire.Wire();
}

function solidOf() {
  const corners = boundary.corners.map((c) => new oc.BRepBuilderAPI_MakeVertex(point(c)).Vertex());
  const edges = boundary.edges.map((e) => edgeOf(e, corners));
  const sewing = new oc.BRepBuilderAPI_Sewing(1e-6, true, true, true, false);
  for (const face of boundary.faces) {
    sewing.Add(faceOf(face, edges));
  }
  sewing.Perform(new oc.Message_ProgressRange_1());
  return new oc.ShapeFix_Solid_1().SolidFromShell(oc.TopoDS.Shell_1(sewing.SewedShape()));
}

function stepOf(solid) {
  const writer = new oc.STEPControl_Writer_1();
  writer.Transfer(solid, oc.STEPControl_StepModelType.STEPControl_AsIs, true, new oc.Message_ProgressRange_1());
  writer.Write('/out.step');
  return oc.FS.readFile('/out.step');
}

const times = [];
let last;
for (let i = 0; i < runs + 3; i++) {
  const began = performance.now();
  const solid = solidOf();
  last = { solid, step: stepOf(solid) };
  times.push(performance.now() - began);
}
fs.writeFileSync(out, last.step);
const properties = new oc.GProp_GProps_1();
oc.BRepGProp.VolumeProperties_1(last.solid, properties, true, false, false);
const sorted = times.slice(3).sort((a, b) => a - b);
process.stdout.write(JSON.stringify({ median: sorted[Math.floor(sorted.length / 2)], least: sorted[0], volume: Math.abs(properties.Mass()), bytes: last.step.length }), () => process.exit(0));
