#include "ui/view3d/frame_graph.h"

#include <Qt3DCore/QEntity>
#include <Qt3DRender/QBlendEquation>
#include <Qt3DRender/QBlendEquationArguments>
#include <Qt3DRender/QCameraSelector>
#include <Qt3DRender/QClearBuffers>
#include <Qt3DRender/QCullFace>
#include <Qt3DRender/QDepthTest>
#include <Qt3DRender/QFilterKey>
#include <Qt3DRender/QLayer>
#include <Qt3DRender/QLayerFilter>
#include <Qt3DRender/QNoDepthMask>
#include <Qt3DRender/QNoDraw>
#include <Qt3DRender/QRenderCapture>
#include <Qt3DRender/QRenderStateSet>
#include <Qt3DRender/QTechniqueFilter>
#include <Qt3DRender/QViewport>

namespace ui::view3d {
namespace {

using namespace Qt3DRender;

QRenderState* depthTest(QDepthTest::DepthFunction function) {
  auto* test = new QDepthTest;
  test->setDepthFunction(function);
  return test;
}

QRenderState* culling(QCullFace::CullingMode mode) {
  auto* cull = new QCullFace;
  cull->setMode(mode);
  return cull;
}

/// What is drawn lies over what is there by its alpha; the depth stays as it is.
QList<QRenderState*> laidOver() {
  auto* arguments = new QBlendEquationArguments;
  arguments->setSourceRgb(QBlendEquationArguments::SourceAlpha);
  arguments->setDestinationRgb(QBlendEquationArguments::OneMinusSourceAlpha);
  arguments->setSourceAlpha(QBlendEquationArguments::Zero);
  arguments->setDestinationAlpha(QBlendEquationArguments::One);
  auto* equation = new QBlendEquation;
  equation->setBlendFunction(QBlendEquation::Add);
  return {arguments, equation, new QNoDepthMask};
}

QTechniqueFilter* forwardTechniques(QFrameGraphNode* parent) {
  auto* filter = new QTechniqueFilter(parent);
  auto* key = new QFilterKey;
  key->setName(QStringLiteral("renderingStyle"));
  key->setValue(QStringLiteral("forward"));
  filter->addMatch(key);
  return filter;
}

}  // namespace

FrameGraph::FrameGraph(QObject* surface, Qt3DCore::QEntity* camera) {
  setSurface(surface);
  auto* selector = new QCameraSelector(new QViewport(forwardTechniques(this)));
  selector->setCamera(camera);

  clear_ = new QClearBuffers(selector);
  clear_->setBuffers(QClearBuffers::ColorDepthBuffer);
  new QNoDraw(clear_);

  const auto none = QCullFace::NoCulling;
  solids_ = addBranch(selector, {depthTest(QDepthTest::Less), culling(none)});
  edges_ = addBranch(selector, {depthTest(QDepthTest::LessOrEqual), culling(none)});
  water_ = addBranch(selector, laidOver() + QList{depthTest(QDepthTest::Less), culling(QCullFace::Back)});
  lines_ = addBranch(selector, laidOver() + QList{depthTest(QDepthTest::Always), culling(none)});
  labels_ = addBranch(selector, laidOver() + QList{depthTest(QDepthTest::Always), culling(none)});

  capture_ = new QRenderCapture(new QNoDraw(selector));
}

QLayer* FrameGraph::addBranch(QFrameGraphNode* parent, QList<QRenderState*> states) {
  auto* filter = new QLayerFilter(parent);
  auto* layer = new QLayer(filter);
  filter->addLayer(layer);
  auto* set = new QRenderStateSet(filter);
  for (QRenderState* state : states) set->addRenderState(state);
  return layer;
}

void FrameGraph::setBackground(const QColor& colour) {
  clear_->setClearColor(colour);
}

void FrameGraph::redraw() {
  // a value that comes back to what was last drawn would be no change; hiding and showing ask twice
  constexpr int kStencilValues = 256;
  clear_->setClearStencilValue((clear_->clearStencilValue() + 1) % kStencilValues);
}

}  // namespace ui::view3d
