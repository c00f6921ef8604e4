using Microsoft.AspNetCore.Components;

namespace Cavaxis.Web.Frame;

/// <summary>A page about the course of a patient: it opens the course beside the case and follows what others write.</summary>
public abstract class CoursePage : PatientPage
{
    /// <summary>The course of the open patient in this window.</summary>
    [Inject]
    public Desk.CourseDesk CourseDesk { get; private set; } = null!;

    /// <summary>False until the record was read: nothing may be said of what runs before that.</summary>
    protected bool IsRead { get; private set; }

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        base.OnInitialized();
        CourseDesk.Changed += OnCourseChanged;
    }

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        await base.OnParametersSetAsync();
        if (IsFound)
        {
            await CourseDesk.OpenAsync(Id);
            IsRead = true;
            OnCourse();
        }
    }

    /// <summary>Called on the window's own thread when the course was read anew, before the page is drawn again.</summary>
    protected virtual void OnCourse()
    {
    }

    /// <inheritdoc/>
    protected override void Dispose(bool disposing)
    {
        CourseDesk.Changed -= OnCourseChanged;
        base.Dispose(disposing);
    }

    private void OnCourseChanged() => _ = InvokeAsync(() =>
    {
        OnCourse();
        StateHasChanged();
    });
}
