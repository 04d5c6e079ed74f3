// Reads DXF files with dxf-parser and says, as JSON, what it understood.
// Usage: node dxf.mjs FOLDER; all *.dxf in it are read. Lengths stay in the unit of the file.
import { readFileSync, readdirSync } from "node:fs";
import { basename, join } from "node:path";
import Parser from "dxf-parser";

// From one vertex to the next: the chord, or the arc whose included angle is four times the bulge's arc tangent.
function piece(a, b, bulge) {
  const chord = Math.hypot(b.x - a.x, b.y - a.y);
  const area = (a.x * b.y - b.x * a.y) / 2;
  if (!bulge) return { length: chord, area };
  const angle = 4 * Math.atan(Math.abs(bulge));
  const radius = chord / 2 / Math.sin(angle / 2);
  return { length: radius * angle, area: area + (Math.sign(bulge) * radius * radius * (angle - Math.sin(angle))) / 2 };
}

function describe(entity) {
  const at = { kind: entity.type.replace(/^LW/, ""), layer: entity.layer };
  switch (entity.type) {
    case "CIRCLE":
      return { ...at, closed: true, length: 2 * Math.PI * entity.radius, area: Math.PI * entity.radius ** 2 };
    case "ARC": {
      const sweep = (entity.endAngle - entity.startAngle + 4 * Math.PI) % (2 * Math.PI);
      return { ...at, closed: false, length: entity.radius * sweep, area: 0 };
    }
    case "LINE": {
      const [a, b] = entity.vertices;
      return { ...at, closed: false, length: Math.hypot(b.x - a.x, b.y - a.y), area: 0 };
    }
    case "TEXT":
      return { ...at, closed: false, length: 0, area: 0, text: entity.text, height: entity.textHeight, start: [entity.startPoint.x, entity.startPoint.y] };
    case "POLYLINE":
    case "LWPOLYLINE": {
      const corners = entity.vertices;
      const closed = entity.shape === true;
      const ends = closed ? corners : corners.slice(0, -1);
      const pieces = ends.map((a, i) => piece(a, corners[(i + 1) % corners.length], a.bulge));
      const sum = (what) => pieces.reduce((total, p) => total + p[what], 0);
      return { ...at, closed, length: sum("length"), area: closed ? sum("area") : 0 };
    }
    default:
      throw new Error(`unexpected entity ${entity.type}`);
  }
}

const folder = process.argv[2];
const result = {};
for (const file of readdirSync(folder).filter((f) => f.endsWith(".dxf"))) {
  const document = new Parser().parseSync(readFileSync(join(folder, file), "utf8"));
  result[basename(file, ".dxf")] = {
    version: document.header.$ACADVER,
    layers: Object.keys(document.tables.layer.layers),
    entities: document.entities.map(describe),
  };
}
process.stdout.write(JSON.stringify(result));
