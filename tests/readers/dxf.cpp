// Reads DXF files with dxflib and says, as JSON, what it understood.
// Usage: dxf FILE...; lengths stay in the unit of the file.
#include <cmath>
#include <cstdio>
#include <string>
#include <vector>

#include <dxflib/dl_creationadapter.h>
#include <dxflib/dl_dxf.h>

namespace {

constexpr double Pi = 3.14159265358979323846;

struct Reader : DL_CreationAdapter {
    std::string version;
    std::vector<std::string> layers, entities;
    std::vector<DL_VertexData> corners;
    std::string layer;
    bool inPolyline = false, closed = false;

    void setVariableString(const std::string& name, const std::string& value, int) override {
        if (name == "$ACADVER") version = value;
    }

    void addLayer(const DL_LayerData& data) override { layers.push_back("\"" + data.name + "\""); }

    void addCircle(const DL_CircleData& c) override { add("CIRCLE", true, 2 * Pi * c.radius, Pi * c.radius * c.radius); }

    void addArc(const DL_ArcData& a) override {
        add("ARC", false, a.radius * std::fmod(a.angle2 - a.angle1 + 720, 360) * Pi / 180, 0);
    }

    void addLine(const DL_LineData& l) override { add("LINE", false, std::hypot(l.x2 - l.x1, l.y2 - l.y1), 0); }

    // The texts that we write need no escape in JSON.
    void addText(const DL_TextData& t) override {
        char at[256];
        std::snprintf(at, sizeof at, R"({"kind":"TEXT","layer":"%s","closed":false,"length":0,"area":0,"height":%.17g,"start":[%.17g,%.17g],"text":")",
                      attributes.getLayer().c_str(), t.height, t.ipx, t.ipy);
        entities.push_back(at + t.text + "\"}");
    }

    void addPolyline(const DL_PolylineData& data) override {
        inPolyline = true;
        closed = data.flags & 1;
        layer = attributes.getLayer();
        corners.clear();
    }

    void addVertex(const DL_VertexData& data) override { corners.push_back(data); }

    // A light polyline ends as an entity; one of vertex entities when their sequence does.
    void endEntity() override { endPolyline(); }
    void endSequence() override { endPolyline(); }

    void endPolyline() {
        if (!inPolyline) return;
        inPolyline = false;
        double length = 0, area = 0;
        const std::size_t count = corners.size();
        for (std::size_t i = 0; i + (closed ? 0 : 1) < count; ++i) {
            const auto &a = corners[i], &b = corners[(i + 1) % count];
            const double chord = std::hypot(b.x - a.x, b.y - a.y), angle = 4 * std::atan(std::fabs(a.bulge));
            area += (a.x * b.y - b.x * a.y) / 2;
            if (a.bulge == 0) {
                length += chord;
                continue;
            }
            const double radius = chord / 2 / std::sin(angle / 2);
            length += radius * angle;
            area += std::copysign(radius * radius * (angle - std::sin(angle)) / 2, a.bulge);
        }
        entity("POLYLINE", layer, closed, length, closed ? area : 0);
    }

    void add(const char* kind, bool isClosed, double length, double area) {
        entity(kind, attributes.getLayer(), isClosed, length, area);
    }

    void entity(const char* kind, const std::string& on, bool isClosed, double length, double area) {
        char text[512];
        std::snprintf(text, sizeof text, R"({"kind":"%s","layer":"%s","closed":%s,"length":%.17g,"area":%.17g})",
                      kind, on.c_str(), isClosed ? "true" : "false", length, area);
        entities.push_back(text);
    }
};

std::string joined(const std::vector<std::string>& parts) {
    std::string text;
    for (const auto& part : parts) text += (text.empty() ? "" : ",") + part;
    return text;
}

std::string stem(const std::string& path) {
    const auto name = path.substr(path.find_last_of('/') + 1);
    return name.substr(0, name.size() - 4);
}

}  // namespace

int main(int count, char** files) {
    std::printf("{");
    for (int i = 1; i < count; ++i) {
        Reader reader;
        DL_Dxf dxf;
        if (!dxf.in(files[i], &reader)) {
            std::fprintf(stderr, "%s cannot be read\n", files[i]);
            return 1;
        }
        std::printf("%s\"%s\":{\"version\":\"%s\",\"layers\":[%s],\"entities\":[%s]}", i > 1 ? "," : "", stem(files[i]).c_str(),
                    reader.version.c_str(), joined(reader.layers).c_str(), joined(reader.entities).c_str());
    }
    std::printf("}");
}
