// Hands every GLB file of a folder to the Khronos validator and says as JSON what it found. Usage: node glb.mjs FOLDER
import fs from 'node:fs';
import path from 'node:path';
import validator from 'gltf-validator';

const folder = process.argv[2];
const found = {};
for (const name of fs.readdirSync(folder).filter((file) => file.endsWith('.glb')).sort()) {
  const report = await validator.validateBytes(new Uint8Array(fs.readFileSync(path.join(folder, name))));
  found[name.slice(0, -'.glb'.length)] = {
    messages: report.issues.messages.map((m) => `${m.code} ${m.pointer ?? ''}: ${m.message}`),
    isBinary: report.mimeType === 'model/gltf-binary',
    triangles: report.info.totalTriangleCount,
    points: report.info.totalVertexCount,
  };
}

console.log(JSON.stringify(found));
