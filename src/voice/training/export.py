"""Writes the trained network for the page: normalisation folded into the weights, weights in 8 bits a channel."""
from pathlib import Path

import numpy as np


def folded(conv, norm):
    """Weights and bias of a convolution with the batch normalisation after it."""
    weight = conv.weight.detach().cpu().double().numpy()
    if norm is None:
        return weight, conv.bias.detach().cpu().double().numpy()
    part = lambda value: value.detach().cpu().double().numpy()
    scale = part(norm.weight) / np.sqrt(part(norm.running_var) + norm.eps)
    return weight * scale[:, None, None], part(norm.bias) - part(norm.running_mean) * scale


def layers(network, dilations):
    """(name, weight, bias, stride, dilation, groups, follows) in order; 'follows' is relu, add or nothing."""
    yield ('first', *folded(network.first, network.first_norm), 2, 1, 1, 'relu')
    yield ('second', *folded(network.second, network.second_norm), 2, 1, 1, 'relu')
    for index, (block, dilation) in enumerate(zip(network.blocks, dilations)):
        yield (f'{index}.deep', *folded(block.deep, block.deep_norm), 1, dilation, block.deep.groups, '')
        yield (f'{index}.widen', *folded(block.widen, block.widen_norm), 1, 1, 1, 'relu')
        yield (f'{index}.narrow', *folded(block.narrow, block.narrow_norm), 1, 1, 1, 'add')
    yield ('head', *folded(network.head, None), 1, 1, 1, 'softmax')


def eight_bits(weight):
    scale = np.abs(weight).max(axis=(1, 2)) / 127 + 1e-12
    return np.round(weight / scale[:, None, None]).astype(np.int8), scale.astype(np.float32)


def save_onnx(network, out, dilations):
    parts = list(layers(network, dilations))
    from onnx import TensorProto, checker, helper, numpy_helper, save

    nodes, stored, last, skip = [], [], 'features', None
    for name, weight, bias, stride, dilation, groups, follows in parts:
        whole, scale = eight_bits(weight)
        for suffix, value in (('w', whole), ('s', scale), ('z', np.zeros(len(scale), np.int8)), ('b', bias.astype(np.float32))):
            stored.append(numpy_helper.from_array(value, f'{name}.{suffix}'))
        nodes.append(helper.make_node('DequantizeLinear', [f'{name}.w', f'{name}.s', f'{name}.z'], [f'{name}.f'], axis=0))
        if name.endswith('deep'):
            skip = last
        pad = weight.shape[2] // 2 * dilation
        nodes.append(helper.make_node('Conv', [last, f'{name}.f', f'{name}.b'], [name], strides=[stride],
                                      dilations=[dilation], group=groups, pads=[pad, pad], kernel_shape=[weight.shape[2]]))
        last = name
        if follows:
            kind = {'relu': 'Relu', 'add': 'Add', 'softmax': 'LogSoftmax'}[follows]
            inputs = [last, skip] if follows == 'add' else [last]
            options = {'axis': 1} if follows == 'softmax' else {}
            last = 'logs' if follows == 'softmax' else f'{name}.{follows}'
            if name == f'{len(dilations) - 1}.narrow':
                last = 'hidden'
            nodes.append(helper.make_node(kind, inputs, [last], **options))
    graph = helper.make_graph(nodes, 'phones', [helper.make_tensor_value_info('features', TensorProto.FLOAT, [1, 40, 'frames'])],
                              [helper.make_tensor_value_info('logs', TensorProto.FLOAT, [1, 40, 'steps']),
                               helper.make_tensor_value_info('hidden', TensorProto.FLOAT, [1, 192, 'steps'])], stored)
    model = helper.make_model(graph, opset_imports=[helper.make_opsetid('', 17)], ir_version=8)
    checker.check_model(model)
    save(model, Path(out, 'network.onnx'))
