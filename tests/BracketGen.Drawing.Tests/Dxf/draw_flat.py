"""Draws flat patterns with ezdxf as other programs would: single lines and arcs in any order, polylines with bulges, old polylines, inches.

Usage: draw_flat.py FOLDER. Reads FOLDER/flat.json, writes FOLDER/<style>.dxf.
"""

import json
import math
import pathlib
import sys

import ezdxf

folder = pathlib.Path(sys.argv[1])
flat = json.loads((folder / "flat.json").read_text())


def document(version, units, scale):
    drawing = ezdxf.new(version)
    drawing.header["$INSUNITS"] = units
    space = drawing.modelspace()
    for name in ("Contour", "Holes", "Biegelinie", "Note"):
        drawing.layers.new(name)
    for x, y, radius in flat["circles"]:
        space.add_circle((x * scale, y * scale), radius * scale, dxfattribs={"layer": "Holes"})
    for x1, y1, x2, y2 in flat["bends"]:
        space.add_line((x1 * scale, y1 * scale), (x2 * scale, y2 * scale), dxfattribs={"layer": "Biegelinie"})
    space.add_text("UPRIGHT", dxfattribs={"layer": "Note", "insert": (0, -20 * scale)})
    return drawing, space


def pieces(space, scale):
    # Every second line the other way round, all in a mixed order, each end a hundredth of a millimetre off at most.
    drawn = list(enumerate(flat["segments"]))
    for number, piece in drawn[::2] + drawn[1::2]:
        if "radius" in piece:
            start, end = piece["from"], piece["from"] + piece["sweep"]
            first, last = (start, end) if piece["sweep"] > 0 else (end, start)
            space.add_arc(
                (piece["centre"][0] * scale, piece["centre"][1] * scale), piece["radius"] * scale, math.degrees(first), math.degrees(last),
                dxfattribs={"layer": "Contour"})
        else:
            ends = [(piece["start"][0] * scale, piece["start"][1] * scale), (piece["end"][0] * scale, piece["end"][1] * scale)]
            if number % 2:
                ends.reverse()
            space.add_line(*ends, dxfattribs={"layer": "Contour"})


def points(scale):
    for piece in flat["segments"]:
        bulge = math.tan(piece["sweep"] / 4) if "radius" in piece else 0
        yield (piece["start"][0] * scale, piece["start"][1] * scale, bulge)


drawing, space = document("R2010", 4, 1)
pieces(space, 1)
space.add_spline([(0, -30), (10, -40), (20, -30)], dxfattribs={"layer": "Note"})
drawing.saveas(folder / "pieces.dxf")

drawing, space = document("R2000", 1, 1 / 25.4)
space.add_lwpolyline(list(points(1 / 25.4)), format="xyb", close=True, dxfattribs={"layer": "Contour"})
drawing.saveas(folder / "inches.dxf")

drawing, space = document("R12", 0, 1)
space.add_polyline2d(list(points(1)), format="xyb", close=True, dxfattribs={"layer": "Contour"})
drawing.saveas(folder / "old.dxf")
