"""Writes given contours as DXF with ezdxf. Says as JSON how long that took. Usage: dxf.py CONTOURS.json OUT.dxf RUNS"""
import io
import json
import sys
import time

import ezdxf

with open(sys.argv[1], encoding="utf-8") as file:
    drawing = json.load(file)


def write():
    document = ezdxf.new("R2000", setup=False)
    document.header["$INSUNITS"] = 4
    for name, colour in (("CUT_THROUGH", 7), ("FOLD_LINE", 5)):
        document.layers.add(name, color=colour)
    space = document.modelspace()
    for centre, radius in drawing["circles"]:
        space.add_circle(centre, radius, dxfattribs={"layer": "CUT_THROUGH"})
    for points in drawing["polylines"]:
        space.add_lwpolyline(points, format="xyb", close=True, dxfattribs={"layer": "CUT_THROUGH"})
    for start, end in drawing["folds"]:
        space.add_line(start, end, dxfattribs={"layer": "FOLD_LINE"})
    stream = io.StringIO()
    document.write(stream)
    return stream.getvalue()


runs = int(sys.argv[3])
times = []
for _ in range(runs + 3):
    began = time.perf_counter()
    text = write()
    times.append(1000 * (time.perf_counter() - began))
with open(sys.argv[2], "w", encoding="utf-8") as file:
    file.write(text)
times = sorted(times[3:])
print(json.dumps({"median": times[len(times) // 2], "least": times[0], "bytes": len(text)}))
