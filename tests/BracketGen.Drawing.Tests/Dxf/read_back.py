"""Reads DXF files with ezdxf and says, as JSON, what it understood.

Usage: read_back.py FOLDER; all *.dxf in it are read. Lengths stay in the unit of the file.
"""

import json
import logging
import math
import pathlib
import sys

import ezdxf
from ezdxf import recover
from ezdxf.lldxf.encoding import decode_dxf_unicode


class Warnings(logging.Handler):
    def __init__(self):
        super().__init__(logging.WARNING)
        self.messages = []

    def emit(self, record):
        self.messages.append(record.getMessage())


def pieces(entity):
    """The entity as (start, end, length, area) of its lines and arcs, in order and in the sense of travel."""
    kind = entity.dxftype()
    if kind == "LINE":
        a, b = entity.dxf.start, entity.dxf.end
        return [((a.x, a.y), (b.x, b.y), (b - a).magnitude, (a.x * b.y - b.x * a.y) / 2)]
    if kind in ("CIRCLE", "ARC"):
        c, r = entity.dxf.center, entity.dxf.radius
        if kind == "CIRCLE":
            sweep, a, b = 2 * math.pi, (c.x + r, c.y), (c.x + r, c.y)
        else:
            sweep = math.radians((entity.dxf.end_angle - entity.dxf.start_angle) % 360)
            a, b = [(p.x, p.y) for p in (entity.start_point, entity.end_point)]
        return [(a, b, r * sweep, (c.x * (b[1] - a[1]) - c.y * (b[0] - a[0]) + r * r * sweep) / 2)]
    if kind in ("LWPOLYLINE", "POLYLINE"):
        points = (
            list(entity.get_points("xyb"))
            if kind == "LWPOLYLINE"
            else [(v.dxf.location.x, v.dxf.location.y, v.dxf.get("bulge", 0)) for v in entity.vertices]
        )
        chain = list(zip(points, points[1:]))
        if entity.closed if kind == "LWPOLYLINE" else entity.is_closed:
            chain.append((points[-1], points[0]))
        # ezdxf's own arcs of the same entity, to see that it reads each bulge as the arc it should be.
        seen = list(entity.virtual_entities())
        result = []
        for ((x0, y0, bulge), (x1, y1, _)), other in zip(chain, seen):
            area = (x0 * y1 - x1 * y0) / 2
            length = math.hypot(x1 - x0, y1 - y0)
            if bulge:
                (_, _, arc_length, arc_area), = pieces(other)
                sweep = math.radians((other.dxf.end_angle - other.dxf.start_angle) % 360)
                length = arc_length
                r = other.dxf.radius
                area += math.copysign(r * r * (sweep - math.sin(sweep)) / 2, bulge)
                ends = [(p.x, p.y) for p in (other.start_point, other.end_point)]
                if bulge < 0:
                    ends.reverse()
                (x0, y0), (x1, y1) = ends
            result.append(((x0, y0), (x1, y1), length, area))
        assert len(result) == len(chain) == len(seen)
        return result
    raise ValueError(f"unexpected entity {kind}")


def describe(entity):
    if entity.dxftype() == "TEXT":
        at = entity.dxf.insert
        return {
            "kind": "TEXT",
            "layer": entity.dxf.layer,
            "closed": False,
            "gap": 0,
            "shortest": 0,
            "length": 0,
            "area": 0,
            "arcs": 0,
            "start": (at.x, at.y),
            "end": (at.x, at.y),
            "text": decode_dxf_unicode(entity.dxf.text),
            "height": entity.dxf.height,
        }
    parts = pieces(entity)
    closed = entity.dxftype() == "CIRCLE" or getattr(entity, "is_closed", getattr(entity, "closed", False))
    gaps = [math.dist(a[1], b[0]) for a, b in zip(parts, parts[1:])]
    gaps.append(math.dist(parts[-1][1], parts[0][0]))
    return {
        "kind": entity.dxftype(),
        "layer": entity.dxf.layer,
        "closed": bool(closed),
        "gap": max(gaps),
        "shortest": min(p[2] for p in parts),
        "length": math.fsum(p[2] for p in parts),
        "area": math.fsum(p[3] for p in parts),
        "arcs": sum(abs(p[2] - math.dist(p[0], p[1])) > 1e-12 for p in parts),
        "start": parts[0][0],
        "end": parts[-1][1],
    }


def read(path, twice):
    warnings = Warnings()
    logging.getLogger("ezdxf").addHandler(warnings)
    try:
        document = ezdxf.readfile(path)
        audit = document.audit()
        # The second way in looks at the file's structure too, and is slow.
        strict = [recover.readfile(path)[1]] if twice else []
        return {
            "version": document.dxfversion,
            "units": document.header.get("$INSUNITS", 0),
            "measurement": document.header.get("$MEASUREMENT", -1),
            "extents": [list(document.header[v])[:2] for v in ("$EXTMIN", "$EXTMAX")],
            "problems": [e.message for a in (audit, *strict) for e in (*a.errors, *a.fixes)] + warnings.messages,
            "layers": {
                layer.dxf.name: [layer.dxf.color, layer.dxf.get("lineweight", -3), layer.dxf.linetype]
                for layer in document.layers
            },
            "entities": [describe(e) for e in document.modelspace()],
        }
    except Exception as error:  # Whatever stops the reader is a fault of the file.
        return {"problems": [f"{type(error).__name__}: {error}"]}
    finally:
        logging.getLogger("ezdxf").removeHandler(warnings)


files = sorted(pathlib.Path(sys.argv[1]).glob("*.dxf"))
json.dump({path.stem: read(path, number % 10 == 0) for number, path in enumerate(files)}, sys.stdout)
