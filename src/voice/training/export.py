"""Writes the trained network for the page: normalisation folded into the weights, weights in 8 bits a channel."""
from pathlib import Path

import numpy as np

from network import CHANNELS, DILATIONS


def folded(conv, norm):
    """Weights and bias of a convolution with the batch normalisation after it."""
    weight = conv.weight.detach().cpu().double().numpy()
    if norm is None:
        return weight, conv.bias.detach().cpu().double().numpy()
    part = lambda value: value.detach().cpu().double().numpy()
    scale = part(norm.weight) / np.sqrt(part(norm.running_var) + norm.eps)
    return weight * scale[:, None, None], part(norm.bias) - part(norm.running_mean) * scale


def layers(network):
    """(name, weight, bias, stride, dilation, groups, follows) in order; 'follows' is what comes after it."""
    yield ('first', *folded(network.first, network.first_norm), 2, 1, 1, 'relu')
    yield ('second', *folded(network.second, network.second_norm), 2, 1, 1, 'relu')
    for index, (block, dilation) in enumerate(zip(network.blocks, DILATIONS)):
        yield (f'{index}.deep', *folded(block.deep, block.deep_norm), 1, dilation, block.deep.groups, '')
        yield (f'{index}.widen', *folded(block.widen, block.widen_norm), 1, 1, 1, 'relu')
        yield (f'{index}.narrow', *folded(block.narrow, block.narrow_norm), 1, 1, 1, 'mean')
        yield (f'{index}.squeeze', *folded(block.squeeze, None), 1, 1, 1, 'relu')
        yield (f'{index}.excite', *folded(block.excite, None), 1, 1, 1, 'weigh')
    yield ('head', *folded(network.head, None), 1, 1, 1, 'softmax')


def eight_bits(weight):
    scale = np.abs(weight).max(axis=(1, 2)) / 127 + 1e-12
    return np.round(weight / scale[:, None, None]).astype(np.int8), scale.astype(np.float32)


def save_onnx(network, out):
    from onnx import TensorProto, checker, helper, numpy_helper, save

    nodes, stored, last, skip, narrow = [], [], 'features', None, None
    for name, weight, bias, stride, dilation, groups, follows in layers(network):
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
        if follows == 'relu':
            last = f'{name}.relu'
            nodes.append(helper.make_node('Relu', [name], [last]))
        elif follows == 'mean':
            narrow, last = name, f'{name}.mean'
            nodes.append(helper.make_node('ReduceMean', [name], [last], axes=[2], keepdims=1))
        elif follows == 'weigh':
            last = 'hidden' if name == f'{len(DILATIONS) - 1}.excite' else f'{name}.add'
            nodes.append(helper.make_node('Sigmoid', [name], [f'{name}.share']))
            nodes.append(helper.make_node('Mul', [narrow, f'{name}.share'], [f'{name}.part']))
            nodes.append(helper.make_node('Add', [skip, f'{name}.part'], [last]))
        elif follows == 'softmax':
            last = 'logs'
            nodes.append(helper.make_node('LogSoftmax', [name], [last], axis=1))
    graph = helper.make_graph(nodes, 'phones', [helper.make_tensor_value_info('features', TensorProto.FLOAT, [1, 40, 'frames'])],
                              [helper.make_tensor_value_info('logs', TensorProto.FLOAT, [1, 40, 'steps']),
                               helper.make_tensor_value_info('hidden', TensorProto.FLOAT, [1, CHANNELS, 'steps'])], stored)
    model = helper.make_model(graph, opset_imports=[helper.make_opsetid('', 17)], ir_version=8)
    checker.check_model(model)
    save(model, Path(out, 'network.onnx'))
