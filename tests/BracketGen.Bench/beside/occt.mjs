// Builds the solid of a boundary with Open CASCADE, faces sewn together, and writes it as STEP. Says as JSON how long that took.
// Usage: node occt.mjs BOUNDARY.json OUT.step RUNS   (with NODE_PATH-free import from tests/readers)
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

function faceOf(face, edges) {
  const whole = face.loops.every((loop) => loop.length === 1 && boundary.edges[loop[0].edge].start === boundary.edges[loop[0].edge].end);
  if (face.kind === 'cylinder') {
    const cylinder = new oc.gp_Cylinder_2(new oc.gp_Ax3_3(point(face.point), direction(face.axis), direction(face.towards)), face.radius);
    if (whole) {
      const heights = face.loops.map((loop) => dot(minus(boundary.edges[loop[0].edge].centre, face.point), face.axis));
      return new oc.BRepBuilderAPI_MakeFace_10(cylinder, 0, 2 * Math.PI, Math.min(...heights), Math.max(...heights)).Face();
    }
    return new oc.BRepBuilderAPI_MakeFace_17(cylinder, wireOf(face.loops[0], edges), true).Face();
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
  const solid = new oc.BRepBuilderAPI_MakeSolid_3(oc.TopoDS.Shell_1(sewing.SewedShape())).Solid();
  oc.BRepLib.OrientClosedSolid(solid);
  return solid;
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
