#include "ui/view3d/materials.h"

#include "ui/view3d/palette.h"

#include <QVector2D>
#include <QVector3D>
#include <QVector4D>
#include <Qt3DRender/QEffect>
#include <Qt3DRender/QFilterKey>
#include <Qt3DRender/QGraphicsApiFilter>
#include <Qt3DRender/QParameter>
#include <Qt3DRender/QRenderPass>
#include <Qt3DRender/QShaderProgram>
#include <Qt3DRender/QTechnique>

namespace ui::view3d {
namespace {

using namespace Qt3DRender;

constexpr char kFaceVertexShader[] = R"(#version 330 core
in vec3 vertexPosition;
in vec3 vertexNormal;
in vec4 vertexColor;
uniform mat4 modelView;
uniform mat4 projectionMatrix;
uniform vec3 keyLight;
uniform vec3 fillLight;
uniform vec3 strengths;
uniform float behind;
flat out vec4 shaded;

void main() {
  vec3 at = (modelView * vec4(vertexPosition, 1.0)).xyz;
  vec3 normal = mat3(modelView) * vertexNormal;
  bool parallel = projectionMatrix[3][3] == 1.0;
  bool fromBehind = dot(normal, parallel ? vec3(0.0, 0.0, 1.0) : -at) < 0.0;
  if (fromBehind) normal = -normal;
  float light = dot(strengths, vec3(1.0, max(0.0, dot(keyLight, normal)), max(0.0, dot(fillLight, normal))));
  shaded = vec4(min(vertexColor.rgb * light, 1.0), vertexColor.a);
  gl_Position = projectionMatrix * vec4(at, 1.0);
  if (fromBehind) {
    vec4 moved = projectionMatrix * vec4(at.xy, at.z - behind * abs(at.z), 1.0);
    if (moved.w > 1e-4) gl_Position.z = moved.z / moved.w * gl_Position.w;
  }
}
)";

constexpr char kPlainFragmentShader[] = R"(#version 330 core
flat in vec4 shaded;
out vec4 fragColor;
void main() { fragColor = shaded; }
)";

constexpr char kLineVertexShader[] = R"(#version 330 core
in vec3 vertexPosition;
in vec3 lineEnd;
in vec3 lineOffset;
in vec4 vertexColor;
uniform mat4 modelView;
uniform mat4 projectionMatrix;
uniform vec2 picture;
uniform float pixel;
uniform float nearer;
flat out vec4 shaded;

vec4 clipOf(vec3 point) {
  vec3 at = (modelView * vec4(point, 1.0)).xyz;
  vec4 clip = projectionMatrix * vec4(at, 1.0);
  vec4 moved = projectionMatrix * vec4(at.xy, at.z + nearer * abs(at.z), 1.0);
  if (moved.w > 1e-4) clip.z = moved.z / moved.w * clip.w;
  return clip;
}

vec4 cutAtEye(vec4 end, vec4 other) {
  const float least = 1e-4;
  return end.w >= least || other.w < least ? end : mix(other, end, (other.w - least) / (other.w - end.w));
}

void main() {
  vec4 a = clipOf(vertexPosition);
  vec4 b = clipOf(lineEnd);
  vec4 from = cutAtEye(a, b);
  vec4 to = cutAtEye(b, a);
  vec2 along = (to.xy / to.w - from.xy / from.w) * picture;
  vec2 forward = length(along) > 1e-3 ? normalize(along) : vec2(1.0, 0.0);
  vec2 leftward = vec2(-forward.y, forward.x);
  vec4 end = lineOffset.x < 0.5 ? from : to;
  vec2 shift = (lineOffset.y * forward + lineOffset.z * leftward) * pixel;
  gl_Position = vec4(end.xy + 2.0 * shift / picture * end.w, end.zw);
  shaded = vertexColor;
}
)";

constexpr char kLabelVertexShader[] = R"(#version 330 core
in vec3 vertexPosition;
uniform vec4 place;
out vec2 where;
void main() {
  where = vertexPosition.xy;
  vec2 at = place.xy + vertexPosition.xy * place.zw;
  gl_Position = vec4(2.0 * at.x - 1.0, 1.0 - 2.0 * at.y, 0.0, 1.0);
}
)";

constexpr char kLabelFragmentShader[] = R"(#version 330 core
in vec2 where;
uniform sampler2D label;
out vec4 fragColor;
void main() { fragColor = texture(label, where); }
)";

QEffect* makeEffect(const char* vertex, const char* fragment, QMaterial* material) {
  auto* program = new QShaderProgram;
  program->setVertexShaderCode(vertex);
  program->setFragmentShaderCode(fragment);
  auto* pass = new QRenderPass;
  pass->setShaderProgram(program);
  auto* key = new QFilterKey;
  key->setName(QStringLiteral("renderingStyle"));
  key->setValue(QStringLiteral("forward"));
  auto* technique = new QTechnique;
  technique->addFilterKey(key);
  technique->addRenderPass(pass);
  technique->graphicsApiFilter()->setApi(QGraphicsApiFilter::OpenGL);
  technique->graphicsApiFilter()->setProfile(QGraphicsApiFilter::CoreProfile);
  technique->graphicsApiFilter()->setMajorVersion(3);
  technique->graphicsApiFilter()->setMinorVersion(3);
  auto* effect = new QEffect(material);
  effect->addTechnique(technique);
  return effect;
}

QParameter* newParameter(QMaterial* material, const char* name, const QVariant& value) {
  auto* parameter = new QParameter(QString::fromLatin1(name), value, material);
  material->addParameter(parameter);
  return parameter;
}

QVector3D vector(const Eigen::Vector3f& v) {
  return {v.x(), v.y(), v.z()};
}

}  // namespace

QMaterial* makeFaceMaterial(Qt3DCore::QNode* parent) {
  auto* material = new QMaterial(parent);
  material->setEffect(makeEffect(kFaceVertexShader, kPlainFragmentShader, material));
  const Lights lights;
  newParameter(material, "keyLight", vector(lights.key));
  newParameter(material, "fillLight", vector(lights.fill));
  newParameter(material, "strengths", QVector3D(lights.even, lights.key_strength, lights.fill_strength));
  newParameter(material, "behind", kBehind);
  return material;
}

LineMaterial::LineMaterial(Qt3DCore::QNode* parent) : QMaterial(parent) {
  setEffect(makeEffect(kLineVertexShader, kPlainFragmentShader, this));
  picture_ = newParameter(this, "picture", QVector2D(1, 1));
  pixel_ = newParameter(this, "pixel", 1.0F);
  newParameter(this, "nearer", kNearer);
}

void LineMaterial::setPicture(const QSizeF& picture, double pixel) {
  picture_->setValue(QVector2D(static_cast<float>(picture.width()), static_cast<float>(picture.height())));
  pixel_->setValue(static_cast<float>(pixel));
}

LabelMaterial::LabelMaterial(QAbstractTexture* texture, Qt3DCore::QNode* parent) : QMaterial(parent) {
  setEffect(makeEffect(kLabelVertexShader, kLabelFragmentShader, this));
  newParameter(this, "label", QVariant::fromValue(texture));
  place_ = newParameter(this, "place", QVector4D());
}

void LabelMaterial::setPlace(const QRectF& place) {
  place_->setValue(QVector4D(static_cast<float>(place.x()), static_cast<float>(place.y()),
                             static_cast<float>(place.width()), static_cast<float>(place.height())));
}

}  // namespace ui::view3d
