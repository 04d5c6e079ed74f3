// Draws facets and lines with WebGL: two small programs and no more state than they need.
/** @param {HTMLCanvasElement} canvas @returns {Picture.Surface | null} */
function surface(canvas) {
  const gl = canvas.getContext('webgl2', { antialias: true, alpha: true });
  return gl && drawing(gl, canvas);
}

/** @param {WebGL2RenderingContext} gl @param {HTMLCanvasElement} canvas @returns {Picture.Surface} */
function drawing(gl, canvas) {

  // The eye is far away, as in a drawing: no perspective. Parts may turn about the shaft, which is z.
  const place = `
    uniform mat3 view; uniform vec3 centre; uniform vec3 scale; uniform float turn; uniform vec4 cut; out float past;
    vec3 turned(vec3 p) {
      float c = cos(turn), s = sin(turn);
      return vec3(c * p.x - s * p.y, s * p.x + c * p.y, p.z);
    }
    vec3 eye(vec3 p) {
      past = dot(cut, vec4(turned(p), -1.0));
      return view * (turned(p) - centre);
    }
    vec4 screen(vec3 e) { return vec4(e.xy * scale.xy, -e.z * scale.z, 1.0); }`;
  const faces = program(
    `#version 300 es
    in vec3 point; out vec3 at; ${place}
    void main() { at = eye(point); gl_Position = screen(at); }`,
    // The facet's own direction, from how its points change over the screen. Inside a body that is cut open there is no light.
    `#version 300 es
    precision highp float;
    in vec3 at; in float past; out vec4 colour; uniform vec4 ink;
    void main() {
      if (past > 0.0) discard;
      vec3 n = normalize(cross(dFdx(at), dFdy(at)));
      float light = gl_FrontFacing ? 0.62 + 0.26 * max(dot(n, normalize(vec3(-0.4, 0.7, 0.6))), 0.0) + 0.16 * n.z : 0.45;
      colour = vec4(ink.rgb * light * ink.a, ink.a);
    }`);
  const lines = program(
    // Each line is a strip of four corners, drawn out to its width on the screen.
    `#version 300 es
    in vec2 corner; in vec3 from; in vec3 to; uniform vec2 pixels; uniform float width; uniform float nearer; ${place}
    void main() {
      vec4 a = screen(eye(from)), b = screen(eye(to));
      vec2 way = (b.xy - a.xy) * pixels;
      way = length(way) > 1e-6 ? normalize(way) : vec2(1.0, 0.0);
      vec4 p = mix(a, b, corner.x);
      past = mix(dot(cut, vec4(turned(from), -1.0)), past, corner.x);
      p.xy += (vec2(-way.y, way.x) * corner.y + way * (corner.x - 0.5)) * width / pixels;
      p.z -= nearer;
      gl_Position = p;
    }`,
    `#version 300 es
    precision highp float;
    in float past; out vec4 colour; uniform vec4 ink;
    void main() {
      if (past > 0.0) discard;
      colour = vec4(ink.rgb * ink.a, ink.a);
    }`);
  // The calculated surface: it may sway, and its colours go in steps like those of the scale beside the flat pictures.
  const painted = program(
    `#version 300 es
    in vec3 point; in vec3 moved; in float value; uniform float sway; out vec3 at; out float shown; ${place}
    void main() { at = eye(point + sway * moved); shown = value; gl_Position = screen(at); }`,
    `#version 300 es
    precision highp float;
    in vec3 at; in float shown; in float past; out vec4 colour; uniform vec4 ink; uniform vec3 bands[10];
    void main() {
      if (past > 0.0) discard;
      vec3 n = normalize(cross(dFdx(at), dFdy(at)));
      float light = 0.8 + 0.2 * abs(n.z);
      colour = vec4(bands[clamp(int(shown * 10.0), 0, 9)] * light, 1.0);
    }`);
  const strip = buffer(new Float32Array([0, -1, 0, 1, 1, -1, 1, 1]));

  /** @param {string} vertex @param {string} fragment */
  function program(vertex, fragment) {
    const made = gl.createProgram();
    for (const [kind, text] of /** @type {[number, string][]} */ ([[gl.VERTEX_SHADER, vertex], [gl.FRAGMENT_SHADER, fragment]])) {
      const shader = /** @type {WebGLShader} */ (gl.createShader(kind));
      gl.shaderSource(shader, text);
      gl.compileShader(shader);
      gl.attachShader(made, shader);
    }
    gl.linkProgram(made);
    if (!gl.getProgramParameter(made, gl.LINK_STATUS)) {
      throw new Error(gl.getProgramInfoLog(made) || 'The picture cannot be drawn here.');
    }
    return made;
  }

  /** @param {Float32Array} values */
  function buffer(values) {
    const made = gl.createBuffer();
    gl.bindBuffer(gl.ARRAY_BUFFER, made);
    gl.bufferData(gl.ARRAY_BUFFER, values, gl.STATIC_DRAW);
    return made;
  }

  /** @param {WebGLProgram} made @param {string} name @param {WebGLBuffer} from @param {number} size @param {number} stride @param {number} offset @param {number} each */
  function attribute(made, name, from, size, stride, offset, each) {
    const at = gl.getAttribLocation(made, name);
    gl.bindBuffer(gl.ARRAY_BUFFER, from);
    gl.enableVertexAttribArray(at);
    gl.vertexAttribPointer(at, size, gl.FLOAT, false, stride, offset);
    gl.vertexAttribDivisor(at, each);
    return at;
  }

  /** @param {WebGLProgram} made @param {Picture.Camera} camera @param {number} turn @param {number[]} ink */
  function set(made, camera, turn, ink) {
    gl.useProgram(made);
    gl.uniformMatrix3fv(gl.getUniformLocation(made, 'view'), false, camera.view);
    gl.uniform3fv(gl.getUniformLocation(made, 'centre'), camera.centre);
    gl.uniform3fv(gl.getUniformLocation(made, 'scale'), camera.scale);
    gl.uniform1f(gl.getUniformLocation(made, 'turn'), turn);
    gl.uniform4fv(gl.getUniformLocation(made, 'cut'), camera.cut);
    gl.uniform4fv(gl.getUniformLocation(made, 'ink'), ink);
  }

  return {
    buffer,
    begin(width, height) {
      gl.viewport(0, 0, width, height);
      gl.clearColor(0, 0, 0, 0);
      gl.enable(gl.DEPTH_TEST);
      gl.depthMask(true);
      gl.clear(gl.COLOR_BUFFER_BIT | gl.DEPTH_BUFFER_BIT);
      gl.enable(gl.BLEND);
      gl.blendFunc(gl.ONE, gl.ONE_MINUS_SRC_ALPHA);
    },
    faces(points, count, camera, turn, ink) {
      const clear = ink[3] < 1;
      set(faces, camera, turn, ink);
      gl.depthMask(!clear);
      (clear ? gl.enable : gl.disable).call(gl, gl.CULL_FACE);
      const at = attribute(faces, 'point', points, 3, 0, 0, 0);
      gl.drawArrays(gl.TRIANGLES, 0, count);
      gl.disableVertexAttribArray(at);
      gl.depthMask(true);
      gl.disable(gl.CULL_FACE);
    },
    lines(ends, count, camera, turn, ink, width, nearer) {
      set(lines, camera, turn, ink);
      gl.uniform2f(gl.getUniformLocation(lines, 'pixels'), canvas.width, canvas.height);
      gl.uniform1f(gl.getUniformLocation(lines, 'width'), width);
      gl.uniform1f(gl.getUniformLocation(lines, 'nearer'), nearer);
      const used = [attribute(lines, 'corner', strip, 2, 0, 0, 0), attribute(lines, 'from', ends, 3, 24, 0, 1), attribute(lines, 'to', ends, 3, 24, 12, 1)];
      gl.drawArraysInstanced(gl.TRIANGLE_STRIP, 0, 4, count);
      used.forEach((at) => {
        gl.vertexAttribDivisor(at, 0);
        gl.disableVertexAttribArray(at);
      });
    },
    painted(points, moved, values, count, camera, sway, bands) {
      set(painted, camera, 0, [1, 1, 1, 1]);
      gl.uniform1f(gl.getUniformLocation(painted, 'sway'), sway);
      gl.uniform3fv(gl.getUniformLocation(painted, 'bands'), bands);
      const used = [attribute(painted, 'point', points, 3, 0, 0, 0), attribute(painted, 'moved', moved, 3, 0, 0, 0), attribute(painted, 'value', values, 1, 0, 0, 0)];
      gl.drawArrays(gl.TRIANGLES, 0, count);
      used.forEach((at) => gl.disableVertexAttribArray(at));
    },
    remove(old) { gl.deleteBuffer(old); },
  };
}
