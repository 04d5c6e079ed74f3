"""Reads what the program made for a job, and works out anew what must be true of it.

Usage: fold_back.py FOLDER; every folder in it that holds flat-pattern.dxf and result.json is read.
Prints JSON: for each folder what was found. Nothing of BracketGen is used: the file is read by ezdxf, contours are measured
and the sheet is folded here, from the bend table of result.json alone. Lengths in mm.
"""

import json
import math
import pathlib
import sys

import ezdxf
from ezdxf import recover

CUT, FOLD, MARK = "CUT_THROUGH", "FOLD_LINE", "SURFACE_MARK"


def segments(entity, scale):
    """The entity as (start, end, bulge): bulge = tan(sweep / 4), as in DXF group 42."""
    if entity.dxftype() == "CIRCLE":
        c, r = entity.dxf.center, entity.dxf.radius
        left, right = (scale * (c.x - r), scale * c.y), (scale * (c.x + r), scale * c.y)
        return [(left, right, -1.0), (right, left, -1.0)]
    assert entity.dxftype() == "LWPOLYLINE", entity.dxftype()
    assert entity.closed
    points = [(scale * x, scale * y, b) for x, y, b in entity.get_points("xyb")]
    return [(a[:2], b[:2], a[2]) for a, b in zip(points, points[1:] + points[:1])]


def arc(start, end, bulge):
    """Centre, radius and sweep (signed) of a bulged segment."""
    chord = math.dist(start, end)
    sweep = 4 * math.atan(bulge)
    radius = chord / 2 / math.sin(abs(sweep) / 2)
    # The centre lies left of the chord for 0 < sweep < 180 degrees.
    off = (1 - bulge * bulge) / (4 * bulge)
    mid = ((start[0] + end[0]) / 2, (start[1] + end[1]) / 2)
    centre = (mid[0] - off * (end[1] - start[1]), mid[1] + off * (end[0] - start[0]))
    return centre, radius, sweep


def measure(contour):
    """Signed area and length of a closed contour: shoelace and circle segments."""
    area = length = 0.0
    for start, end, bulge in contour:
        area += (start[0] * end[1] - end[0] * start[1]) / 2
        if bulge:
            _, radius, sweep = arc(start, end, bulge)
            area += radius * radius * (sweep - math.sin(sweep)) / 2
            length += radius * abs(sweep)
        else:
            length += math.dist(start, end)
    return area, length


def gap(entity, scale):
    """Largest gap between the end of one piece and the start of the next, by ezdxf's own arcs and lines."""
    if entity.dxftype() == "CIRCLE":
        return 0.0
    ends = []
    for (start, end, bulge), piece in zip(segments(entity, scale), entity.virtual_entities()):
        if piece.dxftype() == "ARC":
            a, b = piece.start_point * scale, piece.end_point * scale
            ends.append(((b.x, b.y), (a.x, a.y)) if bulge < 0 else ((a.x, a.y), (b.x, b.y)))
        else:
            a, b = piece.dxf.start * scale, piece.dxf.end * scale
            ends.append(((a.x, a.y), (b.x, b.y)))
    return max(math.dist(ends[i - 1][1], ends[i][0]) for i in range(len(ends)))


def add(a, b, k=1.0):
    return [x + k * y for x, y in zip(a, b)]


class Flange:
    """A flange in place: flat coordinates and height over the sheet's underside to the throttle frame."""

    def __init__(self, origin, x, y, z):
        self.origin, self.x, self.y, self.z = origin, x, y, z

    def point(self, flat, height):
        return add(add(add(self.origin, self.x, flat[0]), self.y, flat[1]), self.z, height)

    def bent(self, bend, thickness):
        """The next flange. The strip of width BA rolls up on a cylinder of the inside radius r: its far edge comes to lie
        r + height under the axis turned by the bend angle, and runs on along the tangent there."""
        (x0, y0), (x1, y1) = bend["start"], bend["end"]
        long = math.hypot(x1 - x0, y1 - y0)
        along = ((x1 - x0) / long, (y1 - y0) / long)
        across = (-along[1], along[0])
        up = bend["direction"] == "up"
        turn = math.radians(bend["angle"]) * (1 if up else -1)
        axis_height = thickness + bend["insideRadius"] if up else -bend["insideRadius"]
        c, s = math.cos(turn), math.sin(turn)

        u = add([k * across[0] for k in self.x], self.y, across[1])  # across, in space
        new_across = add([c * k for k in u], self.z, s)
        new_up = add([-s * k for k in u], self.z, c)
        new_along = add([k * along[0] for k in self.x], self.y, along[1])

        # A point of the far edge at height 0, from the axis along the turned sheet normal.
        edge = self.point((x0, y0), axis_height)
        edge = add(edge, new_up, -axis_height)
        far = (x0 + bend["allowance"] * across[0], y0 + bend["allowance"] * across[1])

        # Axes of flat x and y of the new flange, from along and across.
        nx = add([k * along[0] for k in new_along], new_across, across[0])
        ny = add([k * along[1] for k in new_along], new_across, across[1])
        origin = add(add(edge, nx, -far[0]), ny, -far[1])
        return Flange(origin, nx, ny, new_up)


def flange_of(flat, bends):
    """The flange that a flat point lies on: past every bend whose strip it has behind it."""
    here = 0
    for bend in bends:
        (x0, y0), (x1, y1) = bend["start"], bend["end"]
        long = math.hypot(x1 - x0, y1 - y0)
        depth = ((x1 - x0) * (flat[1] - y0) - (y1 - y0) * (flat[0] - x0)) / long
        along = ((x1 - x0) * (flat[0] - x0) + (y1 - y0) * (flat[1] - y0)) / long
        if bend["from"] == here and depth > 0 and (bend["relief"] == 0 or 0 < along < long):  # Past its relief cuts the sheet stays flat.
            assert depth >= bend["allowance"] - 1e-6, "a hole in a bend"
            here = bend["to"]
    return here


def published_allowance(bend, thickness):
    """Bend allowance from the published rule that the table names; None where it is the shop's own test."""
    r, angle = bend["insideRadius"], math.radians(bend["angle"])
    if bend["rule"] == "DIN 6935":
        k = min(1.0, 0.65 + 0.5 * math.log10(r / thickness)) if r / thickness <= 5 else 1.0
        return angle * (r + max(k, 0.0) * thickness / 2)
    if bend["rule"].startswith("Machinery's Handbook, L = "):
        factor = float(bend["rule"].split("L = ")[1].split(" T")[0])
        assert factor in (0.55, 0.64, 0.71)
        return (factor * thickness + 1.57 * r) * bend["angle"] / 90
    assert bend["rule"].startswith("test bend"), bend["rule"]
    return None


def holes_in(contours):
    """Centre, diameter and travel of every full circle, of every slotted hole, and of every concave arc of the outline (the root of an open slot)."""
    found = []
    for entity, contour, scale in contours:
        if entity.dxftype() == "CIRCLE":
            c = entity.dxf.center
            found.append(((scale * c.x, scale * c.y), 2 * scale * entity.dxf.radius, (0.0, 0.0)))
        elif len(contour) == 4 and sum(abs(piece[2] + 1) < 1e-6 for piece in contour) == 2:
            (a, radius, _), (b, _, _) = (arc(*piece) for piece in contour if piece[2])
            found.append((((a[0] + b[0]) / 2, (a[1] + b[1]) / 2), 2 * radius, (b[0] - a[0], b[1] - a[1])))
        else:
            for piece in contour:
                if piece[2] < 0:
                    centre, radius, _ = arc(*piece)
                    found.append((centre, 2 * radius, (0.0, 0.0)))
    return found


def travel_of(hole):
    """How far a hole of the table lets the bracket be shifted, as a vector of either sense; nothing for a round one."""
    outline = hole.get("outline")
    return [outline["travel"] * k for k in outline["along"]] if outline and outline["kind"] == "slotted" else [0.0, 0.0]


def pilots_in(document, scale):
    """The middles of the crosses on the mark layer: two lines that halve each other. A hole is drilled there; the table alone says how large."""
    lines = [e for e in document.modelspace() if e.dxf.layer == MARK and e.dxftype() == "LINE"]
    middles = [((e.dxf.start.x + e.dxf.end.x) * scale / 2, (e.dxf.start.y + e.dxf.end.y) * scale / 2) for e in lines]
    return [a for i, a in enumerate(middles) for b in middles[i + 1:] if math.dist(a, b) < 1e-6]


def read(folder):
    path = folder / "flat-pattern.dxf"
    document, audit = recover.readfile(path)
    second = ezdxf.readfile(path).audit()
    problems = [e.message for a in (audit, second) for e in (*a.errors, *a.fixes)]
    scale = {1: 25.4, 4: 1.0}[document.header["$INSUNITS"]]
    result = json.loads((folder / "result.json").read_text(encoding="utf-8"))
    bracket, stop = result["bracket"], result["stop"]
    thickness, bends = bracket["thickness"], bracket["bends"]

    cuts = [(e, segments(e, scale), scale) for e in document.modelspace() if e.dxf.layer == CUT]
    measures = [measure(contour) for _, contour, _ in cuts]
    outline = max(range(len(cuts)), key=lambda i: abs(measures[i][0]))
    area = abs(measures[outline][0]) - sum(abs(m[0]) for i, m in enumerate(measures) if i != outline)

    # Fold the holes that the file really has, not those that the table says it has.
    flanges = {0: Flange(*bracket["mountFrame"])}
    for bend in bends:
        flanges[bend["to"]] = flanges[bend["from"]].bent(bend, thickness)
    circles = holes_in(cuts)
    pilots = pilots_in(document, scale)
    off_table, places = [], {}
    for hole in bracket["holes"]:
        drilled = [(p, hole["diameter"], (0.0, 0.0)) for p in pilots]
        centre, diameter, travel = min(circles + drilled, key=lambda c: math.dist(c[0], hole["centre"]) + abs(c[1] - hole["diameter"]))
        wanted = travel_of(hole)
        off_travel = min(math.dist(travel, wanted), math.dist(travel, [-k for k in wanted]))
        off_table.append(max(math.dist(centre, hole["centre"]), abs(diameter - hole["diameter"]), off_travel))
        height = (thickness if bracket["seatSide"] == "top" else 0.0) if hole["purpose"] == "stop" else 0.0
        flange = flanges[flange_of(centre, bends)]
        places[hole["name"]] = (hole["purpose"], flange.point(centre, height), flange.z)
    seat, normal = next((p, z) for purpose, p, z in places.values() if purpose == "stop")
    if bracket["seatSide"] == "bottom":
        normal = [-k for k in normal]
    across = add(normal, stop["direction"], -1.0)

    # The fold lines of the file against the middle of the strips of the table.
    lines = [e for e in document.modelspace() if e.dxf.layer == FOLD]
    off_fold = []
    for bend in bends:
        (x0, y0), (x1, y1) = bend["start"], bend["end"]
        long = math.hypot(x1 - x0, y1 - y0)
        half = bend["allowance"] / 2 / long
        ends = [(x - half * (y1 - y0), y + half * (x1 - x0)) for x, y in (bend["start"], bend["end"])]
        off_fold.append(min(
            max(math.dist(p, (scale * q.x, scale * q.y)) for p, q in zip(ends, (line.dxf.start, line.dxf.end))) for line in lines))

    rules = [(b["allowance"], published_allowance(b, thickness)) for b in bends]
    x, y, z = bracket["mountFrame"][1:]
    cross = [x[1] * y[2] - x[2] * y[1], x[2] * y[0] - x[0] * y[2], x[0] * y[1] - x[1] * y[0]]
    return {
        "problems": problems,
        "gap": max(gap(e, scale) for e, _, _ in cuts),
        "area": area,
        "perimeter": sum(m[1] for m in measures),
        "foldLines": len(lines) - len(bends),
        "offTable": max(off_table),
        "offFold": max(off_fold, default=0.0),
        "offRule": max((abs(a - b) for a, b in rules if b is not None), default=0.0),
        "rightHanded": math.dist(cross, z),
        "seat": math.dist(seat, stop["seat"]),
        "direction": math.degrees(math.asin(min(1.0, math.hypot(*across)))),
        "bolts": [p for purpose, p, _ in places.values() if purpose == "bolt"],
    }


def main():
    answers = {}
    for folder in sorted(p for p in pathlib.Path(sys.argv[1]).iterdir() if (p / "flat-pattern.dxf").is_file()):
        try:
            answers[folder.name] = read(folder)
        except Exception as error:  # Whatever stops the reader is a fault of the files.
            answers[folder.name] = {"problems": [f"{type(error).__name__}: {error}"]}
    json.dump(answers, sys.stdout)


main()
