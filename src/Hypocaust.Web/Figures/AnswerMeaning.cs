using System.Collections;
using System.Reflection;
using Hypocaust.Answers;
using Hypocaust.Design;

namespace Hypocaust.Web.Figures;

/// <summary>What a number of the answer means, for those that are taken over and have no formula of their own.</summary>
internal static class AnswerMeaning
{
    /// <summary>The sentence that stands beside the value in the answer's records; empty for an unknown path.</summary>
    public static string Of(string path)
    {
        var type = typeof(Answer);
        var meaning = "";
        foreach (var name in path.Split('.').Select(step => step.Split('[')[0]))
        {
            var property = type.GetProperty(
                name,
                BindingFlags.Public | BindingFlags.Instance | BindingFlags.IgnoreCase
            );
            if (property is null)
            {
                return "";
            }

            meaning = property.GetCustomAttribute<MeaningAttribute>()?.Text ?? "";
            type = ItemOf(
                Nullable.GetUnderlyingType(property.PropertyType) ?? property.PropertyType
            );
        }

        return meaning;
    }

    private static Type ItemOf(Type type) =>
        type.IsGenericType && typeof(IEnumerable).IsAssignableFrom(type)
            ? type.GetGenericArguments()[^1]
            : type;
}
