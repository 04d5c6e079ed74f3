// Reads every STEP file of a folder with two builds of Open CASCADE and says as JSON what they found. Usage: node step.mjs FOLDER
import fs from 'node:fs';
import path from 'node:path';
import openImporter from 'occt-import-js';
import openCascade from 'opencascade.js/dist/node.js';

const said = [];
const listen = (line) => said.push(line);
const oc = await openCascade({ module: { print: listen, printErr: listen } });
const importer = await openImporter();

// By itself this reader mends what it reads, and a solid turned inside out comes out right. Only what it needs for its own
// model of a solid (curves in the surfaces' parameters) is left to it; what is the wrong way round stays so.
oc.FS.mkdir('/settings');
oc.FS.writeFile('/settings/STEP', `FromSTEP.exec.op : FixShape
FromSTEP.FixShape.FixOrientationMode : 0
FromSTEP.FixShape.FixShellOrientationMode : 0
FromSTEP.FixShape.FixFaceOrientationMode : 0
FromSTEP.FixShape.FixReorderMode : 0
`);
const text = (value) => new oc.TCollection_AsciiString_2(value);
new oc.OSD_Environment_3(text('CSF_STEPDefaults'), text('/settings')).Build();

const kinds = oc.TopAbs_ShapeEnum;

function parts(shape, kind) {
  const map = new oc.TopTools_IndexedMapOfShape_1();
  oc.TopExp.MapShapes_1(shape, kind, map);
  return Array.from({ length: map.Extent() }, (_, i) => map.FindKey(i + 1));
}

function measure(what, shape, ...options) {
  const properties = new oc.GProp_GProps_1();
  oc.BRepGProp[what](shape, properties, ...options);
  return properties;
}

function read(bytes) {
  said.length = 0;
  oc.FS.writeFile('/part.step', bytes);
  const reader = new oc.STEPControl_Reader_1();
  reader.ReadFile('/part.step');
  reader.PrintCheckLoad_1(false, oc.IFSelect_PrintCount.IFSelect_ItemsByEntity);
  reader.TransferRoots(new oc.Message_ProgressRange_1());
  reader.PrintCheckTransfer_1(false, oc.IFSelect_PrintCount.IFSelect_ItemsByEntity);
  const shape = reader.OneShape();
  const shells = parts(shape, kinds.TopAbs_SHELL);
  const volume = measure('VolumeProperties_1', shape, true, false, false);
  const centre = volume.CentreOfMass();
  const { root, meshes } = importer.ReadStepFile(bytes, null);
  return {
    complaints: said.filter((line) => line.trim()),
    isOneSolid: shape.ShapeType() === kinds.TopAbs_SOLID,
    shells: shells.length,
    faces: parts(shape, kinds.TopAbs_FACE).length,
    edges: parts(shape, kinds.TopAbs_EDGE).length,
    corners: parts(shape, kinds.TopAbs_VERTEX).length,
    isClosed: shells.every((shell) => oc.BRep_Tool.IsClosed_1(shell)),
    isValid: new oc.BRepCheck_Analyzer(shape, true, false).IsValid_2(),
    volume: volume.Mass(),
    area: measure('SurfaceProperties_1', shape, false, false).Mass(),
    centre: [centre.X(), centre.Y(), centre.Z()],
    name: root.children[0]?.name ?? '',
    colour: meshes[0]?.color ?? [],
    ...described(),
  };
}

// The same file as a document of parts: what the part is made of, and the volume that the file says it has.
function described() {
  const reader = new oc.STEPCAFControl_Reader_1();
  reader.SetMatMode(true);
  reader.SetPropsMode(true);
  reader.ReadFile('/part.step');
  const document = new oc.Handle_TDocStd_Document_2(new oc.TDocStd_Document(new oc.TCollection_ExtendedString_1()));
  reader.Transfer_1(document, new oc.Message_ProgressRange_1());
  const main = document.get().Main();
  const labels = new oc.TDF_LabelSequence_1();
  oc.XCAFDoc_DocumentTool.ShapeTool(main).get().GetFreeShapes(labels);
  const part = labels.Value(1);
  const materials = new oc.TDF_LabelSequence_1();
  const tool = oc.XCAFDoc_DocumentTool.MaterialTool(main).get();
  tool.GetMaterialLabels(materials);
  const text = () => new oc.Handle_TCollection_HAsciiString_2(new oc.TCollection_HAsciiString_1());
  const [name, description, measure, kind] = [text(), text(), text(), text()];
  if (materials.Length() === 1) tool.GetMaterial(materials.Value(1), name, description, 0, measure, kind);
  const volume = new oc.Handle_TDF_Attribute_1();
  const hasVolume = part.FindAttribute_1(oc.XCAFDoc_Volume.GetID(), volume);
  return {
    material: name.get().ToCString(),
    // In kg/cm³: the reader takes the value for g/cm³ whatever the unit.
    density: 1000 * oc.XCAFDoc_MaterialTool.GetDensityForShape(part),
    statedVolume: hasVolume ? volume.get().Get() : 0,
  };
}

const folder = process.argv[2];
const found = {};
for (const name of fs.readdirSync(folder).filter((file) => file.endsWith('.step')).sort()) {
  found[name.slice(0, -'.step'.length)] = read(fs.readFileSync(path.join(folder, name)));
}

// The library keeps the process alive.
process.stdout.write(JSON.stringify(found), () => process.exit(0));
